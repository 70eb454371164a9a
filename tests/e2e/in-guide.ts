import { expect, type Page } from '@playwright/test';
import { visit } from './page';

export async function openSpace(page: Page): Promise<void> {
  await visit(page, '/guide');
  await page.getByLabel('What clients call you').fill('Reedmere Guiding');
  // Twice, as an impatient thumb does it.
  await page.getByRole('button', { name: 'Open a space' }).dblclick();
  await expect(page.getByRole('link', { name: 'Save the key file' })).toBeVisible();
}
