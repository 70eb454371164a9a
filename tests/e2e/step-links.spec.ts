import { expect, test } from '@playwright/test';
import { beginLesson } from './begin';
import { visit } from './page';

/** Waters are put up and away as they come near: so long after a jump the page has its height, ms. */
const QUIET_MS = 3000;

test(
  'a flag of the rail leads to the very heading of its step, whatever is put away above it',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    await page.locator('#predict').getByRole('radio').nth(1).check();
    await page.getByRole('button', { name: 'Lock it in' }).click();
    for (const from of ['about', 'field']) {
      await page.locator(`section#${from}`).evaluate((read) => read.scrollIntoView());
      await page.waitForTimeout(QUIET_MS);
      const flag = page.getByRole('navigation', { name: 'Steps of the lesson' }).getByRole('link');
      const id = await page.locator('section.try').first().getAttribute('id');
      await flag.and(page.locator(`[href="#${id}"]`)).click();
      await page.waitForTimeout(QUIET_MS);
      const top_px = await page
        .locator(`section#${id}`)
        .evaluate((read) => read.getBoundingClientRect().top);
      expect(Math.abs(top_px), `from ${from}`).toBeLessThanOrEqual(2);
    }
  }
);
