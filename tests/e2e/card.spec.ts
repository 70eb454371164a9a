import { expect, test } from '@playwright/test';
import { deflateSync } from 'node:zlib';
import { faultsOf, spillOf, visit } from './page';

test.use({ serviceWorkers: 'allow' });

test(
  'a boat card is made with the rows that were chosen, is one page, and opens again without a connection',
  { tag: '@narrow' },
  async ({ page, context }) => {
    await visit(page, '/card');
    await page.evaluate(() => navigator.serviceWorker.ready);
    // What is chosen before the record is read is lost to what it says.
    await expect(page.getByRole('button', { name: 'Make the card' })).toBeEnabled();
    await page.getByRole('radio', { name: 'A6' }).check();
    await page.locator('summary').click();
    await page.getByRole('checkbox', { name: 'Snagged' }).check();
    await page.getByRole('checkbox', { name: 'Count it down' }).uncheck();
    await page.getByRole('button', { name: 'Make the card' }).press('Enter');
    const card = page.getByRole('article', { name: 'Practice gear' });
    await expect(card).toBeVisible({ timeout: 60_000 });
    await expect(card.getByText(/^1 of 3$/)).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    await card.getByRole('button', { name: 'Next' }).press('Enter');
    await expect(card.getByRole('heading', { name: 'How far does it go?' })).toBeInViewport();

    const sheet = await page.pdf({ preferCSSPageSize: true });
    const text = sheet.toString('latin1');
    expect(text.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    // 105 mm by 148 mm, in points.
    expect(text).toMatch(/MediaBox\s*\[0 0 298(\.\d+)? (419|420)(\.\d+)?\]/);

    const link = page.url();
    await context.setOffline(true);
    await page.goto('/');
    await page.goto(link);
    await expect(page.getByRole('article', { name: 'Practice gear' })).toBeVisible();
  }
);

const FOOT_M = 0.3048;
const drag = (feet: number) => ({
  ...{ kind: 'drag', tip_m: feet * FOOT_M, duration_s: 2 * feet, lifts: [true, true] },
  came: [
    [feet * 0.29, 0.06],
    [feet * 0.27, 0.09]
  ]
});
const lift = (to_hour: number, duration_s: number) => ({
  ...{ kind: 'lift', from_hour: 9, to_hour, duration_s },
  came: [
    [1.03, 0.14],
    [2.21, 0.31]
  ],
  high: [
    [0.31, 0.26],
    [0.62, 0.51]
  ]
});
/** All that a card can hold, with long names: invented figures. */
const FULLEST = {
  ...{ on: '2031-05-30', model: '1.4.3', units: 'imperial', isOwn: true, wind: 'strong' },
  name: 'The heavy rod with the half ounce football and a big trailer',
  gear: '1/2 oz football jig with a trailer, 7 ft 2 in rod, 12 lb fluorocarbon on 30 lb braid, its own numbers from tests',
  place: 'North hump off the second point, the side with the brush',
  rows: ['moves', 'limits', 'falls', 'hand', 'bites', 'bottoms', 'snag', 'fish', 'cautions'],
  ...{ depths_m: [15 * FOOT_M, 30 * FOOT_M], out_m: 60 * FOOT_M, temperature_C: 16 },
  bottom: 'chunk rock',
  moves: [...[0.5, 1, 2, 3].map(drag), lift(10, 0.5), lift(10, 1.5), lift(11, 2)],
  limits: {
    ...{ tip_m: 2 * FOOT_M, out_m: [60, 42, 24].map((feet) => feet * FOOT_M) },
    count_s: [
      [2, 3, 4],
      [3, 5, null]
    ]
  },
  falls: [5, 10, 15, 20, 25, 30, 40].map((feet) => [feet * FOOT_M, 0.53 * feet, 0.2 * feet]),
  hand: { goes: 1.5, band: 0.6, tries: 12 }
};

test('a card with all its rows and the own hand is one sheet of letter, of A4 and of A6 @narrow @long', async ({
  page
}) => {
  const sheets: Record<string, number> = {};
  for (const size of ['letter', 'a4', 'a6']) {
    const packed = deflateSync(JSON.stringify({ ...FULLEST, size })).toString('base64url');
    await page.goto('about:blank');
    await visit(page, `/card#c1.${packed}`);
    await expect(page.getByRole('article', { name: FULLEST.name })).toBeVisible();
    const paper = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    sheets[size] = paper.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  }
  expect(sheets).toEqual({ letter: 1, a4: 1, a6: 1 });
});
