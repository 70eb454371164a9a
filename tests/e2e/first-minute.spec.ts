import { expect, test, type Locator, type Page } from '@playwright/test';
import challenges from '../../src/lib/course/lessons/01-one-foot/challenges';
import { parseSetup, tipOf } from '../../src/lib/model';
import { beginLesson } from './begin';
import { TOLD } from './hand';
import { brokenNames, inSightUntilResult } from './on-screen';
import { visit } from './page';
import { SCREENS } from './screens';

/** What the first result may cost on a phone: touches, time and words read before it. */
const MOST = { touches: 2, ms: 20_000, words: 20 };
/** Of a jig and its goal, high. */
const LEAST_PICTURE_PX = 110;
const FOOT_M = 0.3048;
const SETUP = parseSetup(challenges[0].setup);
/** One foot of tip at the sensitivity of a finger, CSS px. */
const ONE_FOOT_PX = 49;

const rod = (place: Page | Locator) => place.getByRole('slider', { name: /^Rod/ });

async function laidOut(place: Page | Locator): Promise<void> {
  const widest = () =>
    place
      .locator('figure.rod canvas')
      .first()
      .evaluate((canvas: HTMLCanvasElement) => canvas.width);
  await expect.poll(widest).toBeGreaterThan(200);
}

/** One slow pull with a finger or the mouse: that is one touch. */
async function drag(page: Page, place: Page | Locator, isFinger: boolean): Promise<void> {
  const box = await rod(place).boundingBox();
  if (!box) throw new Error('no rod to be seen');
  const at = (i: number) => ({
    x: box.x + 0.35 * box.width + (ONE_FOOT_PX * i) / 20,
    y: box.y + 0.6 * box.height
  });
  if (!isFinger) {
    await page.mouse.move(at(0).x, at(0).y);
    await page.mouse.down();
    for (let i = 1; i <= 20; i++) await page.mouse.move(at(i).x, at(i).y);
    return page.mouse.up();
  }
  const devtools = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', i?: number) =>
    devtools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: i === undefined ? [] : [at(i)]
    });
  await send('touchStart', 0);
  for (let i = 1; i <= 20; i++) await send('touchMove', i);
  await send('touchEnd');
  await devtools.detach();
}

for (const [size, tag] of [
  [SCREENS[0], '@narrow'],
  [SCREENS[3], '@any-width']
] as const) {
  test(
    `the first result comes with one touch on ${size.width}×${size.height}`,
    { tag },
    async ({ page, hasTouch }) => {
      await page.setViewportSize(size);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await visit(page, '/');
      const words = (await page.locator('main').innerText()).split(/\s+/).filter(Boolean);
      expect(words.length).toBeLessThanOrEqual(MOST.words);
      await laidOut(page);
      const begun_ms = Date.now();
      await drag(page, page, hasTouch);
      const result = page.locator('.result');
      await expect(result).toBeVisible();
      await expect(result.locator(TOLD)).not.toBeEmpty();
      // Begun at the first touch: reading twenty words takes the rest of the time.
      expect(Date.now() - begun_ms).toBeLessThan(MOST.ms);
      await expect(result.getByRole('button', { name: 'Try again' })).toBeInViewport();
      await expect(result.getByRole('link', { name: 'Next: Lesson 1' })).toBeInViewport();
      expect(await page.evaluate(() => scrollY)).toBe(0);
      await expectRoomForLargeText(page, result);
      await result.getByRole('button', { name: 'Replay' }).click();
      await expect.poll(() => brokenNames(result.locator('.row'))).toEqual([]);
      await result.getByRole('button', { name: 'Back to the result' }).click();
      await result.getByRole('button', { name: 'Try again' }).click();
      await expect(rod(page)).toBeInViewport();
      await expect(result).toHaveCount(0);
      // Who comes back finds it again, among all there is to practice.
      await visit(page, '/practice');
      await page.getByRole('link', { name: 'Drag it one foot' }).click();
      await expect(rod(page)).toBeInViewport();
    }
  );
}

/** With letters of twice the size the page scrolls; the result still has a third of the window. */
async function expectRoomForLargeText(page: Page, result: Locator): Promise<void> {
  const write = (size: string) =>
    page.evaluate((to) => (document.documentElement.style.fontSize = to), size);
  await write('200%');
  const height = () => result.evaluate((layer) => layer.clientHeight / innerHeight);
  await expect.poll(height).toBeGreaterThan(1 / 3);
  await write('');
}

async function inSight(place: Locator, names: readonly string[]): Promise<void> {
  for (const name of names) await expect(place.locator(name).first(), name).toBeInViewport();
}

/** A try on one screen, and its result; nothing is scrolled for either. */
async function tryOnOneScreen(page: Page, place: Locator, isFinger: boolean): Promise<void> {
  await laidOut(place);
  const picture = ['.task', 'figure.bottom', '.bar'];
  await inSight(place, [...picture, 'figure.rod', '.bar button.main']);
  await inSightUntilResult(place, picture, () => drag(page, place, isFinger));
  const result = place.locator('.result');
  // The rod has done its work: its bar gives the result the room.
  await inSight(place, ['.task', 'figure.bottom', '.result .number', TOLD]);
  await expect(place.locator('.bar')).toBeHidden();
  await expect(result.getByRole('button', { name: 'Try again' })).toBeInViewport({ ratio: 1 });
  await expect(result.getByRole('button', { name: ONWARD })).toBeInViewport({ ratio: 1 });
  const close = await place.locator('figure.bottom').boundingBox();
  const layer = await result.boundingBox();
  if (!close || !layer) throw new Error('nothing to be seen');
  const isBeside = layer.x >= close.x + close.width - 2;
  const covered_px = isBeside ? 0 : close.y + close.height - layer.y;
  // The bait's picture is whole, its ruler in it: the layer's own edge is three pixels.
  expect(covered_px).toBeLessThanOrEqual(3);
  const sum = result.getByText('How the marks add up');
  await expect(sum).toBeInViewport({ ratio: 0.9 });
  // Unfolded, it scrolls under the picture: less is none of a jig and its goal.
  await sum.click();
  const bait = place.locator('figure.bottom');
  await expect(bait).toBeInViewport({ ratio: 0.95 });
  expect((await bait.boundingBox())?.height).toBeGreaterThanOrEqual(LEAST_PICTURE_PX);
  await sum.click();
}

const ONWARD = 'Next: Drag it two feet';
/** The smallest of phones and the narrowest of wide windows have the least room; the others `npm run test:long` looks at. */
const TIGHT = [SCREENS[0], SCREENS[2]];

for (const size of SCREENS) {
  const tag = [
    size.width < 500 ? '@narrow' : '@any-width',
    ...(TIGHT.includes(size) ? [] : ['@long'])
  ];
  test(
    `a try stands on one screen of ${size.width}×${size.height}`,
    { tag },
    async ({ page, hasTouch }) => {
      await page.setViewportSize(size);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await visit(page, '/lessons/one-foot');
      await beginLesson(page);
      await page.locator('#predict').getByRole('radio').nth(1).check();
      await page.getByRole('button', { name: 'Lock it in' }).click();
      const step = page.locator('#exactly-one-foot');
      await step.getByRole('button', { name: 'Take the rod' }).click();
      const place = step.getByRole('dialog');
      await tryOnOneScreen(page, place, hasTouch);
      await place.getByRole('button', { name: ONWARD }).click();
      // The rod of the next one is in hand at once.
      await expect(page.getByRole('dialog', { name: 'Drag it two feet' })).toBeVisible();
    }
  );
}

/** A finger's pull straight to the right by so many pixels, and then still. */
async function pull(page: Page, place: Page | Locator, px: number): Promise<void> {
  const box = await rod(place).boundingBox();
  if (!box) throw new Error('no rod to be seen');
  const devtools = await page.context().newCDPSession(page);
  const [x, y] = [box.x + 0.35 * box.width, box.y + 0.6 * box.height];
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', way?: number) =>
    devtools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: way === undefined ? [] : [{ x: x + way, y }]
    });
  await send('touchStart', 0);
  for (let i = 1; i <= 30; i++) await send('touchMove', (px * i) / 30);
  await send('touchEnd');
  await devtools.detach();
}

/** The arrow that shows how long a pull is a foot of tip, as it is drawn, CSS px. */
async function arrowOf(place: Page | Locator): Promise<number> {
  const hint = place.locator('.pull');
  await expect(hint).toHaveText(/^\s*1\sft of tip\s*$/);
  await expect(hint).toBeInViewport({ ratio: 1 });
  return (await hint.locator('svg').boundingBox())?.width ?? NaN;
}

/** From the deck no figure tells: the rod's angle does, to a degree, which is two inches of tip here at most. */
async function expectOneFoot(page: Page): Promise<void> {
  const deg = Number(await rod(page).getAttribute('aria-valuenow'));
  const tipAt = (azimuth_deg: number) => {
    const tip = { x: 0, z: 0 };
    tipOf(SETUP, 0, azimuth_deg, tip);
    return tip.x;
  };
  const off_m = Math.abs(tipAt(deg) - tipAt(60)) - FOOT_M;
  expect(Math.abs(off_m)).toBeLessThan(SETUP.rod.length_m * (Math.PI / 180));
}

test(
  'in a lesson a pull as long as the arrow moves the tip one foot, and twice and three times that two and three',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.setViewportSize(SCREENS[0]);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    await page.locator('#predict').getByRole('radio').nth(1).check();
    await page.getByRole('button', { name: 'Lock it in' }).click();
    const step = page.locator('#exactly-two-feet');
    await step.getByRole('button', { name: 'Take the rod' }).click();
    await laidOut(step);
    const arrow_px = await arrowOf(step);
    await pull(page, step, arrow_px);
    await expect(step.locator('.result')).toBeVisible();
    const moved = step.locator('figure.rod figcaption b');
    await expect(moved).toHaveText(/^(11\sin|1\sft)$/);
    // To the inch, and one beside it.
    for (const [feet, told] of [
      [2, /^(1\sft\s11\sin|2\sft|2\sft\s1\sin)$/],
      [3, /^(2\sft\s11\sin|3\sft|3\sft\s1\sin)$/]
    ] as const) {
      await step.getByRole('button', { name: 'Try again' }).click();
      await pull(page, step, feet * arrow_px);
      await expect(step.locator('.result')).toBeVisible();
      await expect(moved).toHaveText(told);
    }
  }
);

test(
  'one more pull at the button where it lay goes nowhere though the result is there',
  { tag: '@narrow' },
  async ({ page }) => {
    await page.setViewportSize(SCREENS[1]);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/');
    await laidOut(page);
    const sweep = await page.getByRole('button', { name: 'Sweep', exact: true }).boundingBox();
    if (!sweep) throw new Error('no button to be seen');
    await page.mouse.move(sweep.x + sweep.width / 2, sweep.y + sweep.height / 2);
    await page.mouse.down();
    await page.waitForTimeout(400);
    await page.mouse.up();
    const next = page.locator('.result').getByRole('link', { name: 'Next: Lesson 1' });
    await expect(next).toBeVisible();
    await page.waitForTimeout(800);
    await page.mouse.down();
    await page.mouse.up();
    await expect(next).toBeVisible();
    await page.waitForTimeout(2500);
    await page.mouse.down();
    await page.mouse.up();
    await expect(page).toHaveURL(/one-foot/);
  }
);

test(
  'after a miss its result outlasts a look at another page and a reload, and the arrow stands there again: a pull as long moves the tip one foot',
  { tag: '@narrow' },
  async ({ page }) => {
    await page.setViewportSize(SCREENS[0]);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/');
    await laidOut(page);
    const px = await arrowOf(page);
    await pull(page, page, 2.5 * px);
    const told = page.locator('.result').locator(TOLD);
    await expect(told).not.toBeEmpty();
    const said = await told.textContent();
    for (const [link, title] of [
      ['Safety first', /^Safety first/],
      ['What this is', /^How far to trust this/]
    ] as const) {
      await page.getByRole('main').getByRole('link', { name: link, exact: true }).click();
      await expect(page).toHaveTitle(title);
      await page.goBack();
      await expect(told).toHaveText(said ?? '');
    }
    await page.reload();
    await expect(told).toHaveText(said ?? '');
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByText('Drag right slowly, or hold Sweep.')).toBeVisible();
    await expect(rod(page)).toBeFocused();
    expect(await arrowOf(page)).toBe(px);
    await pull(page, page, px);
    await expect(page.locator('.result')).toBeVisible();
    await expectOneFoot(page);
  }
);

test(
  'a thumb that scrolls over the picture of a try makes none',
  { tag: '@narrow' },
  async ({ page }) => {
    await visit(page, '/water');
    await page.getByRole('button', { name: 'Take the rod' }).waitFor();
    await expect(rod(page)).toHaveCount(0);
  }
);
