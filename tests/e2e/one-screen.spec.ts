import { expect, test, type Locator, type Page } from '@playwright/test';
import { loadLessons, type Lesson } from '../../src/lib/course';
import { beginLesson } from './begin';
import { visit } from './page';
import { SCREENS } from './screens';

/** A try ends by itself when hand and bait have been still; then its advice is worked out. */
const LONG = { timeout: 30_000 };

/** What of an open try is cut, covered or to be scrolled to. Runs in the page. */
function faultsOnScreen(place: Element): string[] {
  const faults: string[] = [];
  const box = (element: Element) => element.getBoundingClientRect();
  const all = (names: string) =>
    [...place.querySelectorAll(names)].filter((e) => e.checkVisibility());
  for (const element of all('.body, .result, .layer')) {
    const over = element.scrollHeight - element.clientHeight;
    if (over > 1) faults.push(`${element.classList[0]} scrolls ${over} px`);
  }
  for (const element of all('.task, figure, .bar button, .result button, .layer button')) {
    const { left, top, right, bottom } = box(element);
    if (left < -1 || top < -1 || right > innerWidth + 1 || bottom > innerHeight + 1)
      faults.push(`${element.textContent.trim().slice(0, 30)} is cut by the window`);
  }
  const [bait] = all('figure.bottom').map(box);
  for (const layer of all('.result').map(box)) {
    // The layer's own edge is three pixels.
    if (bait && layer.left < bait.right - 2 && layer.top < bait.bottom - 3)
      faults.push(`the bait is covered by ${Math.round(bait.bottom - layer.top)} px`);
  }
  return faults;
}

/** At each of the sizes, so that one try serves for all. */
async function expectOnScreen(page: Page, place: Locator, when: string): Promise<void> {
  for (const size of SCREENS) {
    await page.setViewportSize(size);
    const named = `${when} on ${size.width}×${size.height}`;
    await expect.poll(() => place.evaluate(faultsOnScreen), named).toEqual([]);
  }
}

async function openTries(page: Page, lesson: Lesson): Promise<void> {
  await visit(page, `/lessons/${lesson.id}`);
  await beginLesson(page);
  const asked = page.locator('#predict');
  if ((await asked.getByRole('radio').count()) > 0) await asked.getByRole('radio').first().check();
  else await asked.getByRole('button', { name: 'More' }).click();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
}

async function say(guess: Locator): Promise<void> {
  const length = guess.getByRole('textbox');
  if (await length.isVisible()) await length.fill('9');
  const option = guess.getByRole('radio').first();
  if (await option.isVisible()) await option.check();
  await guess.getByRole('button', { name: 'Call it' }).click();
}

/** Before the hand moves, while it does, where the bait's way is called, and with the result. */
async function makeTry(page: Page, step: Locator): Promise<void> {
  await step.getByRole('button', { name: 'Take the rod' }).click();
  const place = step.getByRole('dialog');
  await expectOnScreen(page, place, 'before');
  await place.getByRole('slider', { name: /^Rod/ }).focus();
  await page.keyboard.down('ArrowUp');
  await expect(place.locator('[data-phase="moving"]')).toBeVisible(LONG);
  await expectOnScreen(page, place, 'during');
  await page.keyboard.press('Space');
  await page.keyboard.up('ArrowUp');
  const guess = place.getByRole('form', { name: 'Your guess' });
  const marks = place.locator('.grade .number');
  await expect(marks.or(guess)).toBeVisible(LONG);
  if (await guess.isVisible()) {
    await expectOnScreen(page, place, 'called');
    await say(guess);
  }
  await expect(place.locator('.grade .change')).not.toBeEmpty(LONG);
  await expectOnScreen(page, place, 'result');
  await place.getByRole('button', { name: 'Close', exact: true }).first().click();
}

for (const lesson of loadLessons().filter(({ challenges }) => challenges.length > 0)) {
  test(
    `every try of ${lesson.id} stands on one screen of five sizes, in each of its states`,
    { tag: ['@any-width', '@all-lessons'] },
    async ({ page }) => {
      test.setTimeout(60_000 * lesson.challenges.length);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await openTries(page, lesson);
      for (const { id } of lesson.challenges) await makeTry(page, page.locator(`#${id}`));
    }
  );
}
