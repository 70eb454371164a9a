import { expect, test, type Locator, type Page } from '@playwright/test';
import { painted, turnByButton, turnByKey } from './hand';
import { faultsByDayAndNight, spillOf, visit } from './page';

const rod = (page: Page) => page.getByRole('slider', { name: /^Rod/ });
const bait = (page: Page) => page.locator('figure.bottom figcaption b');
/** A try ends by itself when hand and bait have been still. */

async function take(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await expect(rod(page)).toBeVisible();
}

async function open(page: Page): Promise<void> {
  await visit(page, '/water');
  await take(page);
  await expect(page.locator('figure.whole canvas').first()).toHaveAttribute('width', /[1-9]\d\d/);
}

async function middle(
  of: Locator
): Promise<{ x: number; y: number; width: number; height: number }> {
  await of.scrollIntoViewIfNeeded();
  const box = await of.boundingBox();
  if (!box) throw new Error('nothing to be seen there');
  return { ...box, x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Where a pointer goes that drags the rod to the right, as in a lesson. */
async function dragPath(page: Page): Promise<{ x: number; y: number }[]> {
  const { x, y, width, height } = await middle(rod(page));
  return Array.from({ length: 12 }, (_, i) => ({
    x: x - 0.2 * width + (80 * i) / 11,
    y: y - 0.05 * height
  }));
}

async function shown(page: Page): Promise<void> {
  await expect(page.getByRole('button', { name: 'Try again' })).toBeVisible();
  await expect(bait(page)).not.toHaveText('0 in');
}

test(
  'a try by mouse, with its replay, is there as a ghost after a reload',
  { tag: '@any-width' },
  async ({ page }) => {
    await open(page);
    const [first, ...rest] = await dragPath(page);
    await page.mouse.move(first.x, first.y);
    await page.mouse.down();
    for (const { x, y } of rest) {
      await page.mouse.move(x, y);
      await painted(page);
    }
    await page.mouse.up();
    await shown(page);
    const travel = await bait(page).textContent();
    await page.getByRole('button', { name: 'Replay' }).click();
    await page.getByRole('slider', { name: 'Moment of the replay' }).fill('0');
    await expect(bait(page)).toHaveText('0 in');
    const kept = () => page.evaluate(() => JSON.parse(localStorage['feltfoot-water']).tries);
    const before = await kept();
    expect(before).toHaveLength(1);
    await page.reload();
    expect(await kept()).toEqual(before);
    expect(travel).toMatch(/in|ft/);
  }
);

test('a try by touch', { tag: '@narrow' }, async ({ page, context }) => {
  await open(page);
  const path = await dragPath(page);
  const devtools = await context.newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  const scrolled = () => page.evaluate(() => scrollY);
  const top = await scrolled();
  await send('touchStart', path[0]);
  for (const at of path.slice(1)) {
    await send('touchMove', at);
    await painted(page);
  }
  await send('touchEnd');
  await shown(page);
  expect(await scrolled()).toBe(top);
});

test(
  'a try by keys alone, from the top of the page',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    await open(page);
    await page.getByRole('button', { name: 'Close' }).click();
    const opens = page.getByRole('button', { name: 'Take the rod' });
    for (let i = 0; i < 30; i++) {
      if (await opens.evaluate((element) => element === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
    await expect(rod(page)).toBeFocused();
    await turnByKey(rod(page), 12);
    await shown(page);
    await page.keyboard.press(' ');
    await expect(page.getByText('Drag the rod to the right, or hold Sweep.')).toBeVisible();
    // What waits for no fall has nothing to start.
    await expect(page.getByRole('button', { name: 'Start' })).toHaveCount(0);
    await expect(bait(page)).toHaveText('0 in');
  }
);

test(
  'a try by the hold buttons, ended by Done',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    await open(page);
    await turnByButton(rod(page), page.getByRole('button', { name: 'Sweep', exact: true }), 12);
    await page.getByRole('button', { name: 'Done' }).click();
    await shown(page);
  }
);

test(
  'gear and the way the rod moves are there again after a reload',
  { tag: '@any-width' },
  async ({ page }) => {
    await visit(page, '/water');
    await page.getByRole('combobox', { name: 'Jig' }).selectOption('3/8 oz');
    await page.getByRole('slider', { name: 'Depth' }).fill('7.3152');
    await page.getByRole('radio', { name: 'Lift' }).check({ force: true });
    await page.reload();
    await expect(page.getByText('70 ft out, 24 ft deep')).toBeVisible();
    await expect(page.getByRole('combobox', { name: 'Jig' })).toHaveValue('1');
    await take(page);
    await expect(rod(page)).toHaveAttribute('aria-valuetext', '9.0 o’clock');
  }
);

test('is accessible before and after a try', { tag: ['@narrow', '@long'] }, async ({ page }) => {
  await open(page);
  expect(await faultsByDayAndNight(page)).toEqual([]);
  await turnByKey(rod(page), 5);
  await shown(page);
  await page.getByRole('button', { name: 'Replay' }).click();
  await page.getByText('The same in words and figures').click();
  expect(await spillOf(page)).toBeLessThanOrEqual(0);
  expect(await faultsByDayAndNight(page)).toEqual([]);
});
