import type { Locator, Page } from '@playwright/test';

/** All that is said of a try is there: what to change, or that nothing is, by the mark of what came out as asked. */
export const TOLD = '.grade :is(.change, .marks.passed, .marks:has-text("nothing bit"))';

/** Where the rod's angle is to be read, degrees. */
const angleOf = async (rod: Locator): Promise<number> =>
  Number(await rod.getAttribute('aria-valuenow'));

/**
 * Holds a key until the rod has turned so far, and lets go in the page itself: a busy machine brings a
 * key press from outside too late.
 * @param rod the slider, of which there is one
 */
export async function turnByKey(rod: Locator, turn_deg: number, key = 'ArrowUp'): Promise<void> {
  const page = rod.page();
  await rod.focus();
  await page.keyboard.down(key);
  await rod.evaluate(
    async (element, { turn_deg, key }) => {
      const angle = () => Number(element.getAttribute('aria-valuenow'));
      const from = angle();
      while (Math.abs(angle() - from) < turn_deg) await new Promise(requestAnimationFrame);
      element.dispatchEvent(new KeyboardEvent('keyup', { key, bubbles: true }));
    },
    { turn_deg, key }
  );
  await page.keyboard.up(key);
}

/** Holds a button of the rod by mouse until the rod has turned so far, and lets go in the page, as by key. */
export async function turnByButton(rod: Locator, button: Locator, turn_deg: number): Promise<void> {
  const { mouse } = rod.page();
  await button.scrollIntoViewIfNeeded();
  const box = await button.boundingBox();
  if (!box) throw new Error('no button to be seen');
  const from = await angleOf(rod);
  await mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await mouse.down();
  await rod.evaluate(
    async (element, { from, turn_deg, held }) => {
      const angle = () => Number(element.getAttribute('aria-valuenow'));
      while (Math.abs(angle() - from) < turn_deg) await new Promise(requestAnimationFrame);
      held?.dispatchEvent(new PointerEvent('pointerup', { bubbles: true }));
    },
    { from, turn_deg, held: await button.elementHandle() }
  );
  await mouse.up();
}

/** Until the page has painted what the hand last did: the next movement is then another moment’s. */
export async function painted(page: Page): Promise<void> {
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))
  );
}
