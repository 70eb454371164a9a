import { expect, type Locator, type Page } from '@playwright/test';
import { cutOff } from './page';
import { LANDSCAPE, SCREENS } from './screens';

/** A try ends by itself when hand and bait have been still; then its advice is worked out. */
export const LONG = { timeout: 30_000 };

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
  const row = all('.result .row > :is(button, a)').map(box);
  const last = row.at(-1);
  if (last && row.length > 2 && !row.slice(0, -1).some(({ bottom }) => bottom > last.top))
    faults.push('the last button of the result stands alone in a row');
  const [bait] = all('figure.bottom').map(box);
  for (const layer of all('.result').map(box)) {
    // The layer's own edge is three pixels.
    if (bait && layer.left < bait.right - 2 && layer.top < bait.bottom - 3)
      faults.push(`the bait is covered by ${Math.round(bait.bottom - layer.top)} px`);
  }
  return faults;
}

/**
 * What of the rod's picture lies under the words that say how the rod is taken: the rod, its line, the dial,
 * the angler, or other words. Runs in the page.
 */
export function coveredByHint(place: Element): string[] {
  const box = (element: Element) => element.getBoundingClientRect();
  const hint = place.querySelector('.caption');
  if (!hint?.textContent.trim()) return [];
  const said = box(hint);
  const faults: string[] = [];
  for (const words of place.querySelectorAll('figure.rod figcaption')) {
    const other = box(words);
    if (other.height === 0) continue;
    const isApart =
      other.left >= said.right ||
      said.left >= other.right ||
      other.top >= said.bottom ||
      said.top >= other.bottom;
    if (!isApart) faults.push(`the words “${words.textContent.trim()}”`);
  }
  const [back, front] = place.querySelectorAll<HTMLCanvasElement>('figure.rod canvas');
  const lead = new OffscreenCanvas(1, 1).getContext('2d');
  if (!lead) throw new Error('no canvas');
  lead.fillStyle = getComputedStyle(place).getPropertyValue('--lead');
  lead.fillRect(0, 0, 1, 1);
  const drawn = lead.getImageData(0, 0, 1, 1).data;
  // A hair's line covers a few pixels in part: half way to its colour is one.
  const isLead = (of: Uint8ClampedArray) =>
    [0, 1, 2].every((i) => Math.abs(of[i] - drawn[i]) < 60) && of[3] > 128;
  const isAnything = (of: Uint8ClampedArray) => of[3] > 128;
  for (const [sheet, name, is] of [
    [front, 'the rod or its line', isAnything],
    [back, 'the dial or the angler', isLead]
  ] as const) {
    const { left, top, width } = box(sheet);
    const scale = sheet.width / width;
    const [x, y] = [(said.left - left) * scale, (said.top - top) * scale];
    const [w, h] = [said.width * scale, said.height * scale];
    const pixels = sheet.getContext('2d')?.getImageData(x, y, w, h).data;
    let count = 0;
    for (let i = 0; pixels && i < pixels.length; i += 4) if (is(pixels.subarray(i, i + 4))) count++;
    if (count > 0) faults.push(`${name}, ${count} px`);
  }
  return faults;
}

/** At each of the sizes, so that one try serves for all. */
export async function expectOnScreen(page: Page, place: Locator, when: string): Promise<void> {
  for (const size of SCREENS) {
    await page.setViewportSize(size);
    const named = `${when} on ${size.width}×${size.height}`;
    await expect.poll(() => place.evaluate(faultsOnScreen), named).toEqual([]);
  }
}

/** What a result says that lies in the fade above its buttons, with the last of it scrolled to. Runs in the page. */
function fadedWords(place: Element): string[] {
  /** High, CSS px. */
  const FADE = 12;
  const layer = place.querySelector('.result');
  const row = layer?.querySelector('.row');
  if (!layer || !row) return ['no result'];
  layer.scrollTop = layer.scrollHeight;
  const end = row.getBoundingClientRect().top - FADE;
  const said = document.createTreeWalker(layer, NodeFilter.SHOW_TEXT);
  const faults: string[] = [];
  while (said.nextNode()) {
    const words = said.currentNode;
    const { parentElement } = words;
    if (!words.textContent?.trim() || !parentElement?.checkVisibility()) continue;
    if (parentElement.closest('.row, .out-of-sight')) continue;
    const lines = document.createRange();
    lines.selectNodeContents(words);
    const over = lines.getBoundingClientRect().bottom - end;
    if (over > 0) faults.push(`“${words.textContent}” by ${Math.round(over)} px`);
  }
  layer.scrollTop = 0;
  return faults;
}

/** On phones, upright and laid across. */
export async function expectWordsClear(page: Page, place: Locator, when: string): Promise<void> {
  const before = page.viewportSize();
  for (const size of [...SCREENS.filter(({ width }) => width < 500), LANDSCAPE]) {
    await page.setViewportSize(size);
    const named = `${when} on ${size.width}×${size.height}`;
    await expect.poll(() => place.evaluate(fadedWords), named).toEqual([]);
  }
  if (before) await page.setViewportSize(before);
}

/** What is to be pressed before the rod moves anything: it is lit where the jig hangs over the water. */
export const litStart = (place: Locator): Locator =>
  place.locator('button.main', { hasText: /^Start$/ });

/** More than there are speeds of the rod. */
const ALL_SPEEDS = 8;

/** By the keys, until the rod has begun to move, and the try is ended by hand. */
async function move(page: Page, place: Locator): Promise<void> {
  const moving = place.locator('[data-phase="moving"]');
  await place.getByRole('slider', { name: /^Rod/ }).focus();
  // At a hop's pace the rod is up, and the try over, before five sizes have been looked at.
  for (let i = 0; i < ALL_SPEEDS; i++) await page.keyboard.press('-');
  if (await litStart(place).isVisible()) await page.keyboard.press('Space');
  await page.keyboard.down('ArrowUp');
  await expect(moving).toBeVisible(LONG);
  await expectOnScreen(page, place, 'during');
  // Once it has ended by itself, the same key begins another.
  if (await moving.isVisible()) await page.keyboard.press('Space');
  await page.keyboard.up('ArrowUp');
}

/** What the bait did, as the form of this try asks for it. */
async function say(guess: Locator): Promise<void> {
  const length = guess.getByRole('textbox');
  if (await length.isVisible()) await length.fill('9');
  const option = guess.getByRole('radio').first();
  if (await option.isVisible()) await option.check();
  await guess.getByRole('button', { name: 'Call it' }).click();
}

/**
 * An open try in each of its states: before the hand moves, while it does, where the bait's way is
 * called, and with the result.
 * @param told what the result shows when it is all there
 */
export async function expectTryOnScreen(page: Page, place: Locator, told: Locator): Promise<void> {
  await expectOnScreen(page, place, 'before');
  await expect.poll(() => place.evaluate(coveredByHint), 'under the hint before').toEqual([]);
  await move(page, place);
  const guess = place.getByRole('form', { name: 'Your guess' });
  await expect(told.or(guess).first()).toBeVisible(LONG);
  if (await guess.isVisible()) {
    await expectOnScreen(page, place, 'called');
    await say(guess);
  }
  await expect(told).not.toBeEmpty(LONG);
  await expectOnScreen(page, place, 'result');
}

/** What of an open try cannot be used with letters of twice the size. Runs in the page. */
function faultsAtTwice(place: Element): string[] {
  const faults: string[] = [];
  const box = (element: Element) => element.getBoundingClientRect();
  const seen = (names: string) =>
    [...place.querySelectorAll<HTMLElement>(names)].filter((e) =>
      e.checkVisibility({ opacityProperty: true })
    );
  const pictures = seen('.bottom .sheets, .rod .sheets');
  for (const picture of pictures) {
    // Less is no picture of a jig or a rod.
    if (box(picture).height < 110)
      faults.push(`a picture is ${Math.round(box(picture).height)} px high`);
    for (const words of seen('figcaption, .caption')) {
      const [a, b] = [box(picture), box(words)];
      const over = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (over > 1 && b.width > 0)
        faults.push(`${words.innerText.trim().slice(0, 20)} covers ${Math.round(over)} px`);
    }
  }
  for (const marks of seen('.result .number')) {
    const lines = document.createRange();
    lines.selectNodeContents(marks);
    const rects = [...lines.getClientRects()].filter(({ width }) => width > 1);
    if (rects.some(({ top }) => top > rects[0].bottom)) faults.push('the marks break');
  }
  for (const button of seen(':is(.result, .layer) .main')) {
    const { top, bottom } = box(button);
    if (top < 0 || bottom > innerHeight + 1) faults.push('the main button is out of sight');
  }
  return faults;
}

/** WCAG 2.2, 1.4.4, where there is most to show. */
export async function expectUsableAtTwice(page: Page, place: Locator, when: string): Promise<void> {
  const write = (size: string) =>
    page.evaluate((to) => (document.documentElement.style.fontSize = to), size);
  const before = page.viewportSize();
  await write('200%');
  for (const size of SCREENS.filter(({ width }) => width < 500)) {
    await page.setViewportSize(size);
    const named = `${when} on ${size.width}×${size.height} with letters of twice the size`;
    await expect.poll(() => place.evaluate(faultsAtTwice), named).toEqual([]);
    expect(await cutOff(page), named).toEqual([]);
  }
  await write('');
  if (before) await page.setViewportSize(before);
}

/** The buttons of a result whose names break into more lines than one. */
export function brokenNames(row: Locator): Promise<string[]> {
  return row.evaluate((all) =>
    [...all.children].flatMap((button) => {
      const name = document.createRange();
      name.selectNodeContents(button.querySelector('.named') ?? button);
      const lines = new Set([...name.getClientRects()].map(({ top }) => Math.round(top)));
      return lines.size > 1 ? [button.textContent.trim()] : [];
    })
  );
}

/** Nothing of these is out of the window in any frame of a try that is made so, until its result is there. */
export async function inSightUntilResult(
  place: Locator,
  names: readonly string[],
  make: () => Promise<void>
): Promise<void> {
  const watched = await place.evaluateHandle((screen, watched) => {
    const seen = { frames: 0, out: [] as string[] };
    const isIn = (name: string) => {
      const box = screen.querySelector(name)?.getBoundingClientRect();
      if (!box || box.width === 0 || box.height === 0) return false;
      return box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
    };
    const look = () => {
      if (screen.querySelector('.result')) return;
      seen.frames += 1;
      for (const name of watched) if (!isIn(name) && !seen.out.includes(name)) seen.out.push(name);
      requestAnimationFrame(look);
    };
    look();
    return seen;
  }, names);
  await make();
  await expect(place.locator('.result')).toBeVisible();
  const { frames, out } = await watched.evaluate((seen) => seen);
  expect(frames).toBeGreaterThan(0);
  expect(out).toEqual([]);
}
