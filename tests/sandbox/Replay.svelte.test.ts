import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import { recordScenario, type RodInput } from '../../src/lib/model';
import GearPanel from '../../src/lib/sandbox/GearPanel.svelte';
import Replay from '../../src/lib/sandbox/Replay.svelte';
import { formatLength, tipTravel } from '../../src/lib/scoring';
import { smallWater } from './waters';

const setup = smallWater();
const input: RodInput = {
  kind: 'rod_input',
  rate_Hz: 100,
  elevation_deg: Array.from({ length: 60 }, (_, i) => 0.6 * i),
  azimuth_deg: 0
};
const run = recordScenario({ ...setup, move: input, hold_s: 2 });

test('the scrubber moves the numbers beside the pictures', async () => {
  await render(Replay, { run, units: 'metric' });
  const scrubber = page.getByRole('slider', { name: 'Moment of the replay' });
  const { result } = run;
  const tip = page.getByText(`${formatLength(tipTravel(result), 'metric')} moved`);
  await expect.element(tip).toBeVisible();
  await scrubber.fill('0');
  await expect.element(page.getByText('0 cm moved').first()).toBeVisible();
  await expect.element(tip).not.toBeInTheDocument();
});

test('steps go to and fro by a twentieth of a second', async () => {
  await render(Replay, { run, units: 'metric' });
  const scrubber = page.getByRole('slider', { name: 'Moment of the replay' });
  await scrubber.fill('0.3');
  await page.getByRole('button', { name: 'A step on' }).click();
  await expect.element(scrubber).toHaveValue('0.35');
  await page.getByRole('button', { name: 'A step back' }).click();
  await page.getByRole('button', { name: 'A step back' }).click();
  await expect.element(scrubber).toHaveValue('0.25');
});

test('a replay plays from its very beginning', async () => {
  await render(Replay, { run, units: 'metric' });
  const scrubber = page.getByRole('slider', { name: 'Moment of the replay' });
  await scrubber.fill('0');
  await page.getByRole('button', { name: 'Replay' }).click();
  await expect.element(scrubber).not.toHaveValue('0');
});

test('what the plots show stands below in words and figures', async () => {
  await render(Replay, { run, units: 'metric' });
  await page.getByText('The same in words and figures').click();
  await expect.element(page.getByRole('table')).toBeVisible();
  await expect.element(page.getByText(/^.*The tip went/)).toBeVisible();
  const bait = formatLength(run.result.travel_m, 'metric');
  expect(page.getByRole('row').elements().at(-1)?.textContent).toContain(bait);
});

test('gear is changed in the learner’s units and handed on as a setup', async () => {
  const onchange = vi.fn();
  await render(GearPanel, { setup, units: 'imperial', onchange });
  await page.getByRole('combobox', { name: 'Jig' }).selectOptions('3/4 oz');
  expect(onchange.mock.lastCall?.[0].bait.mass_kg).toBeCloseTo(0.02126, 5);
  await page.getByRole('combobox', { name: 'Line' }).selectOptions('30 lb braid');
  expect(onchange.mock.lastCall?.[0].line.material).toBe('braid');
  await page.getByRole('slider', { name: 'Depth' }).fill('6.096');
  expect(onchange.mock.lastCall?.[0].water.depth_m).toBeCloseTo(6.096, 6);
});
