import { expect, test } from '@playwright/test';
import { beginLesson } from './begin';
import { visit } from './page';

/** A cheap phone. */
const SLOWER = { rate: 4 };
/** Waters above are put up one after the other: this long after the last the page has its height, ms. */
const QUIET_MS = 3000;

test(
  'Back to a lesson stands where it was left, on a slow phone as well',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    test.slow();
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    await page.locator('#predict').getByRole('radio').nth(1).check();
    await page.getByRole('button', { name: 'Lock it in' }).click();
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Emulation.setCPUThrottlingRate', SLOWER);
    const onward = page.getByRole('link', { name: /^Skip to: Lesson 2/ });
    // Not at the very foot, which is shorter once the lesson is done.
    await page.locator('section#feel').evaluate((read) => read.scrollIntoView());

    const settled = async () => {
      const height = () => page.evaluate(() => document.documentElement.scrollHeight);
      for (let before = -1, now = await height(); now !== before; now = await height()) {
        before = now;
        await page.waitForTimeout(QUIET_MS);
      }
    };
    await settled();
    // In one go: nothing comes between.
    const left_px = await onward.evaluate((link) => {
      const { top } = document.querySelector('section#feel')!.getBoundingClientRect();
      (link as HTMLElement).click();
      return top;
    });
    await expect(page).toHaveURL(/your-hands-ruler$/);
    await page.goBack();
    await expect(page).toHaveURL(/one-foot$/);
    await settled();
    const back = await page.locator('section#feel').boundingBox();
    expect(Math.abs((back?.y ?? Infinity) - left_px)).toBeLessThanOrEqual(1);
  }
);
