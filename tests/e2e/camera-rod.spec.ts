import { expect, test } from '@playwright/test';
import { pageBefore, posesOf, tipAcross_px, writeCamera } from './fake-camera';
import { visit } from './page';

const pose = (to_deg: number) => ({ to_deg, in_s: 0.4, hold_s: 1.1 });
/** Over the marks and back, still for a while, then a drag of a foot. */
const foot = posesOf([
  { to_deg: 0, in_s: 0, hold_s: 7 },
  ...[30, 60, 90, 60, 30].map(pose),
  pose(0),
  { to_deg: 60, in_s: 0.8, hold_s: 4 },
  { to_deg: 71, in_s: 1.5, hold_s: 8 }
]);

test('a real rod before a camera drags a bait a foot @any-width', async ({ baseURL }, info) => {
  const clip = info.outputPath('rod.y4m');
  writeCamera(clip, 30, foot);
  const page = await pageBefore(clip, baseURL);
  await visit(page, '/water');
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await page.getByText('More', { exact: true }).click();
  await page.getByText('Your own rod, on camera').click();
  await page.getByRole('button', { name: 'Camera on' }).click();
  const picture = page.getByRole('button', { name: /^Tap the tape/ });
  await expect(page.getByText('Tap the tape.', { exact: true })).toBeVisible();
  await expect.poll(() => picture.evaluate((box) => box.clientHeight)).toBeGreaterThan(60);
  const box = (await picture.boundingBox())!;
  await picture.click({ position: { x: (tipAcross_px(0) / 320) * box.width, y: box.height / 2 } });
  await expect(page.getByText('Tip over the 30° mark, and still.')).toBeVisible();
  await expect(page.getByText('Ready. Make your move.')).toBeVisible({ timeout: 25_000 });
  await expect(page.getByText(/^Graded from the film, ± /)).toBeVisible();
  // From 60 to 71° this rod's tip comes 12.3 in nearer: within an inch, as the page rounds it.
  const tip = page.locator('.water').getByText(/^(1[123]\sin|1\sft(\s1\sin)?)\smoved(,|$)/);
  await expect(tip.first()).toBeVisible();
  await page.context().browser()?.close();
});
