import { expect, type Browser, type Page } from '@playwright/test';
import { visit } from './page';

export async function openClinic(page: Page): Promise<string> {
  await visit(page, '/guide');
  await page.getByLabel('What clients call you').fill('Reedmere Club');
  await page.getByRole('button', { name: 'Open a space' }).click();
  await page.getByLabel('Name of the clinic').fill('May meeting');
  await page.getByRole('button', { name: 'Open a clinic' }).dblclick();
  // Its questions are worked out first: on a busy machine that takes its time.
  await expect(page.locator('.code')).toHaveText(/^[2-9A-Z]{6}$/, { timeout: 45_000 });
  return page.locator('.code').innerText();
}

export async function phoneIn(browser: Browser, code: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`/clinic#${code}`);
  await expect(page.getByText(/^\d+ of \d+$/)).toBeVisible();
  return page;
}

export async function next(page: Page): Promise<void> {
  const before = await page.getByText(/\d+ of \d+, about/).innerText();
  await page.getByRole('button', { name: /^(Next|Skip this) round$/ }).click();
  await expect(page.getByText(before)).toHaveCount(0);
}

/** Leads the room on to its first question. */
export async function goToQuestion(page: Page): Promise<void> {
  while (!(await page.getByRole('button', { name: /^(Stop voting|Close the round)$/ }).isVisible()))
    await next(page);
}

/** What a phone can vote for. */
export const options = (page: Page) => page.locator('fieldset button');
