import { expect, type Page } from '@playwright/test';
import type { Challenge } from '../../src/lib/scoring';
import { post } from './made-tries';
import { visit } from './page';

export async function openSpace(page: Page): Promise<void> {
  await visit(page, '/guide');
  await page.getByLabel('What clients call you').fill('Reedmere Guiding');
  // Twice, as an impatient thumb does it.
  await page.getByRole('button', { name: 'Open a space' }).dblclick();
  await expect(page.getByRole('link', { name: 'Save the key file' })).toBeVisible();
}

/** What is asked in a homework that no form was filled in for. */
interface Asked {
  title: string;
  tries: number;
  challenges: readonly Challenge[];
  due?: string;
}

/** Sets homework as the form does. @returns its page, for the guide */
export async function postHomework(page: Page, asked: Asked): Promise<string> {
  const about = { from: '', note: '', lessons: [], objectives: [], phase: 'seen', due: null };
  const task = { ...about, questions: 1, ...asked };
  const { id } = await post(page.request, '/api/guide/homework', { task });
  return `/guide/${id}`;
}

/** The link for clients, from the homework’s page. */
export const linkFor = (page: Page) => page.locator('.share .link code').innerText();
