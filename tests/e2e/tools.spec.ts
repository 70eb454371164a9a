import { expect, test } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { turnByKey } from './hand';
import { visit } from './page';

/** A try ends by itself when hand and bait have been still. */

test('two runs are compared by keys alone @any-width', async ({ page }) => {
  await visit(page, '/compare');
  const said = page.getByRole('region', { name: 'Two runs side by side' }).getByRole('status');
  await expect(said).toContainText('With 3/8 oz');
  const pace = page.getByRole('radio', { name: 'Weight' });
  await pace.focus();
  await page.keyboard.press('ArrowRight');
  await expect(said).toContainText('Half as fast it stayed on the bottom');
  const moment = page.getByRole('slider', { name: 'Moment of both replays' });
  await moment.focus();
  await page.keyboard.press('Home');
  const moved = page.locator('figure.bottom figcaption b');
  await expect(moved).toHaveText(['0 in', '0 in']);
  await page.getByRole('button', { name: 'Loop', exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
  await expect(moved.nth(1)).not.toHaveText('0 in');
});

test('a retrieve is watched, done by hand and marked; its run is taken along @any-width @long', async ({
  page
}) => {
  await visit(page, '/retrieves');
  await page.getByRole('button', { name: 'Drag it one foot' }).click();
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await page.getByText('More', { exact: true }).click();
  await page.getByRole('button', { name: 'Show me' }).click();
  await page.getByRole('button', { name: 'Try again' }).click();
  const rod = page.getByRole('slider', { name: /^Rod/ });
  await turnByKey(rod, 8);
  await expect(page.getByText('of 100', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Replay', exact: true }).click();
  await page.getByText('Save this run').click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Figures CSV' }).click();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('feltfoot-run.csv');
  const [head, first] = (await readFile(await file.path(), 'utf8')).split('\r\n');
  expect(head).toMatch(/^time_s,tip_x_m,/);
  expect(first).toMatch(/^0,/);
  await page.getByRole('button', { name: 'Close', exact: true }).first().click();
  await page.getByRole('button', { name: 'One hop' }).click();
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await expect(page.getByRole('slider', { name: /^Rod/ })).toHaveCount(1);
});

test('a record says under which name it was saved, and a double tap does not erase it @narrow', async ({
  page
}) => {
  await visit(page, '/record');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file' }).click();
  const name = (await coming).suggestedFilename();
  expect(name).toMatch(/^feltfoot-record-[\d-]+\.json$/);
  await expect(page.getByText(`Saved: ${name} is in your downloads.`)).toBeVisible();
  await page.getByRole('button', { name: 'Erase', exact: true }).dblclick();
  await expect(page.getByRole('button', { name: 'Keep it' })).toBeVisible();
  await expect(page.getByText('Your record is empty now.')).toBeHidden();
});
