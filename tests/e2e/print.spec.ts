import { expect, test } from '@playwright/test';
import { sheetsOf, visit } from './page';
import { expectPrintReadable } from './smallest-text';

/** Three quarters of what a letter sheet has between its margins, CSS px. */
const SHEET_PX = (0.75 * 249 * 96) / 25.4;

/** Of the drills the one whose step is open at once, and the one with most to write down. */
for (const lesson of ['safety', 'one-foot'])
  test(`the drill of ${lesson} is one sheet`, { tag: '@any-width' }, async ({ page }) => {
    await visit(page, `/lessons/${lesson}`);
    expect(await sheetsOf(page)).toEqual([1, 1]);
    await expectPrintReadable(page, lesson);
    await page.emulateMedia({ media: 'print' });
    const drill = await page.locator('.drill').filter({ visible: true }).boundingBox();
    expect(drill?.height, 'the sheet is used').toBeGreaterThan(SHEET_PX);
    await expect(page.getByRole('heading', { name: /: the drill$/ })).toBeVisible();
    await expect(page.getByRole('heading', { level: 2 }).filter({ visible: true })).toHaveCount(1);
  });

test(
  'a quiz is a sheet of questions and one of answers',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    test.slow();
    await visit(page, '/print-quiz?seed=4');
    const answers = page.getByRole('region', { name: 'Answers' });
    await expect(answers.getByRole('list').first().locator('> li')).toHaveCount(10, {
      timeout: 60_000
    });
    expect(await sheetsOf(page)).toEqual([2, 2]);
    await expectPrintReadable(page, 'a quiz');
  }
);

test('what to think of before going out is one sheet', { tag: '@any-width' }, async ({ page }) => {
  await visit(page, '/safety');
  expect(await sheetsOf(page)).toEqual([1, 1]);
  await expectPrintReadable(page, 'safety');
});
