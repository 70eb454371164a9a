import { expect, test, type Page } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { pageBefore, posesOf, writeCamera } from './fake-camera';
import { makeClip, type MadeClip } from './made-clip';
import { faultsOf, spillOf, visit } from './page';

/** 200 px of the clip are two feet, so 100 px of way are one. */
const WAY_PX = 100;
const CORNERS = [
  [220, 300],
  [420, 300],
  [420, 100],
  [220, 100]
] as const;

const SENTENCE = /^This jig, this rod: 1\sft of tip moves the jig .* ± .* at 18\sft, /;

/** From rest to rest, filmed at steps that vary as a phone's do. */
function poolClip(format: MadeClip['format']): MadeClip {
  const steps = [1 / 30, 1 / 60, 1 / 60, 1 / 20];
  const stamps_s = Array.from({ length: 44 }, (_, i) => i).reduce<number[]>(
    (all, i) => [...all, (all.at(-1) ?? 0) + steps[i % 4]],
    []
  );
  const begun_s = stamps_s[0] + 0.2;
  const places = stamps_s.map((t_s) => {
    const u = Math.min(Math.max((t_s - begun_s) / 0.8, 0), 1);
    return [270 + WAY_PX * u * u * u * (10 + u * (6 * u - 15)), 250] as const;
  });
  return { width_px: 640, height_px: 360, stamps_s, places, format };
}

/** Taps a place of the clip in the picture. */
async function cross(page: Page, [x, y]: readonly [number, number]) {
  const view = page.getByRole('application');
  const box = (await view.boundingBox())!;
  await page.mouse.click(box.x + (x / 640) * box.width, box.y + (y / 360) * box.height);
}

async function choose(page: Page, name: string, buffer: Buffer) {
  await page.getByLabel('Choose a clip').setInputFiles({ name, mimeType: 'video/mp4', buffer });
}

/** Gives the clip its scale and follows its jig to the end. */
async function measure(page: Page) {
  await expect(page.getByText('frame 1 of 44')).toBeVisible();
  for (const corner of CORNERS) {
    await cross(page, corner);
    await page.getByRole('button', { name: /^Mark (bottom|top)/ }).click();
  }
  await page.getByRole('radio', { name: 'Scale' }).check({ force: true });
  await page.getByLabel('Width').fill('24');
  await page.getByLabel('Height').fill('24');
  await page.getByRole('radio', { name: 'Jig' }).check({ force: true });
  await cross(page, [270, 250]);
  await page.getByRole('button', { name: 'Mark jig' }).click();
  await page.getByRole('button', { name: 'Follow from here' }).click();
  await expect(page.getByText('Followed to the end of the clip.')).toBeVisible();
  // One foot, within the ± that the page itself prints beside it.
  await expect(page.locator('.number')).toHaveText(/^(11\sin|1\sft|1\sft\s1\sin) give or take/);
}

test('a rod and a clip become a sentence: gear, scale, jig, follow, keep, fit, the outfit’s own @narrow', async ({
  page
}) => {
  const clip = await makeClip(page, poolClip('webm'));
  await visit(page, '/gear');
  await page.getByLabel('Name').fill('Pool rod');
  await page.getByLabel('Weight').first().fill('0.5 oz');
  await page.getByLabel('Length', { exact: true }).fill('7 ft');
  await page.getByLabel('Pound test', { exact: true }).fill('12');
  await page.getByRole('button', { name: 'Save outfit' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Pool rod' })).toBeVisible();
  await visit(page, '/practice');
  await page.getByRole('link', { name: 'Film your jig' }).click();
  await page.locator('main[data-awake]').waitFor();
  await choose(page, 'pool.webm', clip);
  await measure(page);
  await expect(page.getByText('It stayed down.')).toBeVisible();
  expect(await faultsOf(page)).toEqual([]);
  expect(await spillOf(page)).toBe(0);

  await page.getByLabel('Depth').fill('10');
  await page.getByLabel('Hand to jig').fill('25');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const session = JSON.parse(await readFile(await (await coming).path(), 'utf8'));
  expect(session.tests[0].travel_m).toBeGreaterThan(0.29);
  expect(session.tests[0].travel_m).toBeLessThan(0.32);
  expect(session.tests[0].filmed.bait.t_s).toHaveLength(44);
  await page.getByRole('button', { name: 'Keep as one test' }).click();
  await expect(page.getByText(/^Kept in “Filmed on .*”: 1 test\.$/)).toBeVisible();

  await page.getByRole('link', { name: /^Fit the model to “Filmed on / }).click();
  await page.getByRole('combobox', { name: 'Gear' }).selectOption('Pool rod');
  await page.getByRole('button', { name: 'Fit the model to these tests' }).press('Enter');
  const told = page.getByRole('region', { name: 'What the tests say' });
  await expect(told.getByText(SENTENCE)).toBeVisible();
  await told.getByRole('button', { name: 'Use as Pool rod’s own numbers' }).press('Enter');
  await expect(told.getByText('Pool rod has its own numbers now.')).toBeVisible();
  await told.getByRole('link', { name: 'My gear' }).click();
  await expect(page.getByText(/own numbers/i).first()).toBeVisible();
});

test('what is no clip is told so, and what was measured stays @any-width @long', async ({
  page
}) => {
  const clip = await makeClip(page, poolClip('mp4'));
  await visit(page, '/film');
  await choose(page, 'empty.mp4', Buffer.alloc(0));
  await expect(page.getByText('That file is empty.')).toBeVisible();
  await choose(page, 'notes.mp4', Buffer.from('Ove, at the pool: 11 in, 12 in'));
  await expect(page.getByText('This page can’t read that file')).toBeVisible();
  await choose(page, 'begins.mp4', clip.subarray(0, 300));
  await expect(page.getByText(/cut short|can’t read that file/)).toBeVisible();
  // What there is of a clip that was not copied to its end can be measured.
  const half = clip.subarray(0, Math.floor(clip.length / 2));
  await choose(page, 'half.mp4', half);
  await expect(page.getByText(/frame 1 of \d+$/)).toBeVisible();
  await page.getByRole('slider', { name: 'Frame' }).fill('43');
  await expect(page.getByText('This frame can’t be read. Go to the next one.')).toBeVisible();
  await page.getByRole('slider', { name: 'Frame' }).fill('0');
  await expect(page.getByText('This frame can’t be read. Go to the next one.')).toBeHidden();
  await page.getByRole('radio', { name: 'Jig' }).check({ force: true });
  await page.getByRole('application').focus();
  // By keys: from the middle of the picture to the jig.
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowLeft');
  for (let i = 0; i < 7; i++) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Follow from here' }).press('Enter');
  await expect(page.getByText('The clip can’t be read past')).toBeVisible();
});

test('where no decoder can be asked, the browser’s player shows each frame, and the foot is a foot @any-width @long', async ({
  page
}) => {
  const clip = await makeClip(page, poolClip('webm'));
  await page.addInitScript(() => Reflect.deleteProperty(window, 'VideoDecoder'));
  await visit(page, '/film');
  await choose(page, 'pool.webm', clip);
  await measure(page);
});

test('a clip recorded here is opened as any other @any-width @long', async ({ baseURL }, info) => {
  const camera = info.outputPath('pool.y4m');
  writeCamera(camera, 4, posesOf([{ to_deg: 0, in_s: 0, hold_s: 4 }]));
  const page = await pageBefore(camera, baseURL);
  await visit(page, '/film');
  await page.getByRole('button', { name: 'Record one' }).click();
  await page.getByRole('button', { name: 'Start recording' }).click();
  // A clip needs five frames; the camera has twenty a second.
  await expect(page.getByText(/^2\ss of 60$/)).toBeVisible();
  await page.getByRole('button', { name: 'Stop recording' }).click();
  await expect(page.getByText(/frame 1 of \d+$/)).toBeVisible();
  await page.context().browser()?.close();
});
