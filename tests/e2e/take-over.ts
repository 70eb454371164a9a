import { expect, type Page } from '@playwright/test';
import { toDocument, type LearnerRecord } from '../../src/lib/wire';
import { visit } from './page';

/** Takes a record over as its owner would. */
export async function takeOver(page: Page, record: LearnerRecord): Promise<void> {
  await visit(page, '/record');
  const buffer = Buffer.from(JSON.stringify(toDocument(record)));
  const file = { name: 'record.json', mimeType: 'application/json', buffer };
  await page.getByLabel('Add from a file').setInputFiles(file);
  await expect(page.getByText(/^Added/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Set aside' })).toHaveCount(0);
}
