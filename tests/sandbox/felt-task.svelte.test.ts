import { beforeEach, expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import RunFilm from '../../src/lib/sandbox/RunFilm.svelte';
import { smallWater } from './waters';

beforeEach(() => localStorage.clear());

const base = {
  setup: smallWater({ bottom: { ground: { kind: 'gravel', seed: 3 } } }),
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 0 },
  hold_s: 1,
  units: 'imperial'
} as const;

test('a task that asks to feel has its captions on and both switches in sight; another has not', async () => {
  const felt = await render(PracticeWater, {
    ...base,
    layout: 'screen',
    isFelt: true,
    name: 'Felt'
  });
  const captions = page.getByRole('button', { name: 'Captions' });
  await expect.element(captions).toBeVisible();
  await expect.element(captions).toHaveAttribute('aria-pressed', 'true');
  await expect.element(page.getByRole('button', { name: 'Feel: off' })).toBeVisible();
  // Put away by who does not want them, they stay away.
  await captions.click();
  await expect.element(captions).toHaveAttribute('aria-pressed', 'false');
  await felt.unmount();
  await render(PracticeWater, { ...base, layout: 'screen', isFelt: true, name: 'Felt' });
  await expect.element(captions).toHaveAttribute('aria-pressed', 'false');
});

test('where nothing is to be felt they wait in the fold, off', async () => {
  await render(PracticeWater, { ...base, layout: 'screen', name: 'Seen' });
  await expect.element(page.getByText('Captions')).not.toBeVisible();
});

test('a demonstration of a bottom says what comes up the line while it plays', async () => {
  const move = { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 4, elevation_deg: 0 } as const;
  await render(RunFilm, { ...base, move, name: 'Demonstration', isFelt: true });
  await expect.element(page.getByRole('button', { name: 'Feel: off' })).toBeVisible();
  await page.getByRole('button', { name: 'Replay' }).click();
  await expect.element(page.getByText(/knock|rattle|load/), { timeout: 20_000 }).toBeVisible();
});
