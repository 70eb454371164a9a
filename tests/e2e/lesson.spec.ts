import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';

const ADDRESS = '/lessons/one-foot';
/** A try ends by itself when hand and bait have been still; then marks and advice are worked out. */
const LONG = { timeout: 20_000 };

const station = (page: Page, id: string): Locator => page.locator(`section#${id}`);
const first = (page: Page) => station(page, 'exactly-one-foot');
const rod = (page: Page) => first(page).getByRole('slider', { name: /^Rod/ });
const marks = (page: Page) => first(page).locator('.grade .number');

async function predict(page: Page): Promise<void> {
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'Begin' }).click();
  const asked = station(page, 'predict');
  await asked.getByRole('radio').nth(1).check();
  await asked.getByRole('button', { name: 'That is my answer' }).click();
  await expect(asked.getByText('the model says so')).toBeVisible();
}

/** Waters are put up near the window only, so the way there is the learner's. */
async function reachChallenge(page: Page): Promise<void> {
  await predict(page);
  await page.getByRole('button', { name: 'On: See it' }).click();
  await page.getByRole('button', { name: 'On: Exactly one foot' }).click();
}

async function sweepByHold(page: Page, time_ms: number): Promise<void> {
  const button = first(page).getByRole('button', { name: 'Sweep', exact: true });
  await button.scrollIntoViewIfNeeded();
  const box = await button.boundingBox();
  if (!box) throw new Error('no button to be seen');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForTimeout(time_ms);
  await page.mouse.up();
}

test('nothing is shown before it was predicted', async ({ page }) => {
  await page.goto(ADDRESS);
  await expect(station(page, 'see')).toContainText('Opens when you have said what you expect.');
  await expect(page.getByRole('button', { name: 'Show me' })).toHaveCount(0);
  await predict(page);
  await expect(page.getByRole('button', { name: 'Show me' })).toHaveCount(1);
});

test('prediction, demonstration, challenge by mouse, marks, replay; a reload keeps it', async ({
  page
}) => {
  await predict(page);
  await page.getByRole('button', { name: 'On: See it' }).click();
  await station(page, 'see').getByRole('button', { name: 'Show me' }).click();
  await expect(
    station(page, 'see').getByRole('slider', { name: 'Moment of the replay' })
  ).toBeVisible(LONG);
  await page.getByRole('button', { name: 'On: Exactly one foot' }).click();
  await sweepByHold(page, 800);
  await expect(marks(page)).toBeVisible(LONG);
  await expect(first(page).locator('.grade .words')).toContainText('The tip went');
  await first(page).getByRole('slider', { name: 'Moment of the replay' }).fill('0');
  const got = parseInt((await marks(page).textContent()) ?? '');
  await page.reload();
  const kept = first(page).getByRole('button', { name: `Try 1: ${got} marks. Replay` });
  await expect(kept).toBeVisible(LONG);
  await page.goto('/');
  await expect(page.getByText(/Go on with “One foot”/)).toBeVisible();
});

/** Presses of the speed buttons, from the first speed on. */
async function setSpeed(page: Page, name: 'Slower' | 'Faster', presses: number): Promise<void> {
  for (let i = 0; i < presses; i++) await first(page).getByRole('button', { name }).click();
}

test('a slow foot passes', async ({ page }) => {
  await reachChallenge(page);
  await setSpeed(page, 'Slower', 1);
  // A press of Enter turns the rod for three tenths of a second of the hand's own time, so that a
  // busy machine makes no difference: seven at 0.15 m/s are a foot.
  const button = first(page).getByRole('button', { name: 'Sweep', exact: true });
  await button.focus();
  for (let i = 0; i < 7; i++) {
    await page.keyboard.press('Enter');
    await page.waitForTimeout(350);
  }
  await expect(marks(page)).toBeVisible(LONG);
  await expect(first(page).locator('.grade')).toContainText('Passed');
});

test('a fast yard fails, and the advice says how far and how slowly', async ({ page }) => {
  await reachChallenge(page);
  await setSpeed(page, 'Faster', 4);
  await sweepByHold(page, 600);
  await expect(marks(page)).toBeVisible(LONG);
  await expect(first(page).locator('.grade')).toContainText('Not yet');
  await expect(first(page).locator('.grade .change')).toContainText(/1 ft/, LONG);
  await expect(first(page).locator('.grade .words')).toContainText(/too far|left the bottom/);
});

test('the first challenge by touch', async ({ page, context }) => {
  await reachChallenge(page);
  const dial = rod(page);
  await dial.scrollIntoViewIfNeeded();
  const box = await dial.boundingBox();
  if (!box) throw new Error('no rod to be seen');
  const devtools = await context.newCDPSession(page);
  const at = (i: number) => ({
    x: box.x + box.width * (0.35 + 0.012 * i),
    y: box.y + box.height * (0.3 - 0.012 * i)
  });
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', i?: number) =>
    devtools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: i === undefined ? [] : [at(i)]
    });
  await send('touchStart', 0);
  for (let i = 1; i <= 12; i++) {
    await send('touchMove', i);
    await page.waitForTimeout(70);
  }
  await send('touchEnd');
  await expect(marks(page)).toBeVisible(LONG);
});

test('the way from the top of the page to the marks by keys alone', async ({ page }) => {
  await page.goto(ADDRESS);
  const tabTo = async (target: Locator) => {
    for (let i = 0; i < 80; i++) {
      if (await target.evaluateAll((all) => all.some((one) => one === document.activeElement)))
        return;
      await page.keyboard.press('Tab');
    }
    await expect(target).toBeFocused();
  };
  await tabTo(page.getByRole('button', { name: 'Begin' }));
  await page.keyboard.press('Enter');
  await tabTo(station(page, 'predict').getByRole('radio').first());
  await page.keyboard.press('ArrowDown');
  await tabTo(page.getByRole('button', { name: 'That is my answer' }));
  await page.keyboard.press('Enter');
  await expect(station(page, 'predict').getByText('the model says so')).toBeVisible();
  await tabTo(rod(page));
  await page.keyboard.down('ArrowUp');
  await page.waitForTimeout(900);
  await page.keyboard.up('ArrowUp');
  await expect(marks(page)).toBeVisible(LONG);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`is accessible in the ${colorScheme}, from first sight to the marks`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.goto(ADDRESS);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await reachChallenge(page);
    await sweepByHold(page, 500);
    await expect(marks(page)).toBeVisible(LONG);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    const spill = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(spill).toBeLessThanOrEqual(0);
  });
}
