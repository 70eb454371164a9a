import { expect, test } from '@playwright/test';
import { cameraOn, pageBefore, posesOf, writeCamera } from './fake-camera';
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

/** What is made of a rod's angles, to the grade, is proved by `tests/sandbox/watched-rod.test.ts`, of no camera. */
test('the tape of a rod before a camera is tapped, and followed from one mark to the next @any-width', async ({
  baseURL
}, info) => {
  const clip = info.outputPath('marks.y4m');
  writeCamera(
    clip,
    16,
    posesOf([
      { to_deg: 0, in_s: 0, hold_s: 7 },
      { ...pose(30), hold_s: 9 }
    ])
  );
  const page = await pageBefore(clip, baseURL);
  await visit(page, '/water');
  await cameraOn(page);
  await expect(page.getByText('Tip over the 60° mark, and still.')).toBeVisible();
  await page.context().browser()?.close();
});

test('a real rod before a camera drags a bait a foot @any-width @long', async ({
  baseURL
}, info) => {
  const clip = info.outputPath('rod.y4m');
  writeCamera(clip, 30, foot);
  const page = await pageBefore(clip, baseURL);
  await visit(page, '/water');
  await cameraOn(page);
  await expect(page.getByText('Ready. Make your move.')).toBeVisible({ timeout: 25_000 });
  await expect(page.getByText(/^Graded from the film, ± /)).toBeVisible();
  // From 60 to 71° this rod's tip comes 12.3 in nearer: within an inch, as the page rounds it.
  const tip = page.locator('.water').getByText(/^(1[123]\sin|1\sft(\s1\sin)?)\smoved(,|$)/);
  await expect(tip.first()).toBeVisible();
  await page.context().browser()?.close();
});
