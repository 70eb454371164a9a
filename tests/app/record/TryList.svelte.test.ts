import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import { idsOf } from '../../../src/lib/course/drills';
import TryList from '../../../src/lib/app/record/TryList.svelte';
import { aTry } from '../../practice/samples';

const at = '2030-05-01T08:15:00.000Z';
const azimuth_deg = Array.from({ length: 301 }, (_, i) => 60 + i / 20);
const input = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg } as const;
const [drag] = idsOf({ drill: 'drag', phase: 'seen', seed: 0 });

test('a try at a drill is listed with its way, its marks, its time of day and its replay', async () => {
  const tries = [aTry('d1', { challenge: drag, phase: 'seen', input, at })];
  await render(TryList, { tries, units: 'metric' });
  const row = page.getByRole('row', { name: /A drag/ });
  await expect.element(row.getByRole('cell', { name: /^[\d.]+\s(cm|m)$/ })).toBeVisible();
  await expect.element(row.getByRole('cell', { name: /^\d+$/ })).toBeVisible();
  await expect.element(row.getByText(/2030, \d{1,2}:15 [ap]m/)).toBeVisible();
  await row.getByRole('button', { name: 'Show this try of A drag' }).click();
  await expect.element(page.getByRole('region', { name: 'Replay of the try' })).toBeVisible();
});

test('a try of an older model keeps the marks it was given, and shows today’s beside them', async () => {
  const tries = [aTry('d4', { challenge: drag, input, at, marks: 3, model: '1.3.0' })];
  await render(TryList, { tries, units: 'metric' });
  const row = page.getByRole('row', { name: /A drag/ });
  await expect.element(row.getByRole('cell', { name: /^3 model 1\.3\.0$/ })).toBeVisible();
  await row.getByRole('button', { name: 'Show this try of A drag' }).click();
  const words = /Model 1\.3\.0 gave this 3\. Today’s model gives \d+\./;
  await expect.element(page.getByText(words)).toBeVisible();
});

test('a try says why it cannot be shown', async () => {
  const broken = aTry('d2', { challenge: drag, at });
  broken.input = { ...broken.input, elevation_deg: 3, azimuth_deg: 4 };
  await render(TryList, {
    tries: [aTry('d3', { challenge: 'no-such-challenge', at }), broken],
    units: 'metric'
  });
  const gone = page.getByRole('row', { name: /no-such-challenge/ });
  await expect.element(gone.getByText(/challenge is gone/)).toBeVisible();
  const refused = page.getByRole('row', { name: /A drag/ });
  await expect.element(refused.getByText('Today’s model can’t run this try.')).toBeVisible();
});
