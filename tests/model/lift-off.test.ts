import { expect, test } from 'vitest';
import {
  isOffBottom,
  OFF_BOTTOM_M,
  simulate,
  SKIP_M,
  type ScenarioInput
} from '../../src/lib/model';
import { trySummaryOf } from '../../src/lib/sandbox/events';
import { SIGNS } from '../../src/lib/course/items/measures';

/** A lift of one hour; quicker ones leave the bottom, at heights from nothing to half a foot. */
const lifted = (duration_s: number): ScenarioInput => ({
  water: { depth_m: 4 },
  line: { diameter_m: 0.00033 },
  bait: { mass_kg: 0.014 },
  start: { bait_x_m: 18, slack_m: 0.1 },
  move: { kind: 'lift', from_deg: 30, to_deg: 60, duration_s },
  hold_s: 2
});
const runs = [0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.25, 1.3, 1.35, 1.4, 2].map((s) =>
  simulate(lifted(s))
);

test('hops, signs of questions and the words of a try say the same of each flight', () => {
  for (const run of runs) {
    const isLifted = isOffBottom(run.peak_height_m);
    const said = `rose ${run.peak_height_m} m`;
    expect(run.hops.length > 0, said).toBe(isLifted);
    expect(SIGNS.lifted(run), said).toBe(isLifted);
    const words = trySummaryOf({ setup: lifted(1), result: run }, 'metric');
    expect(words.includes('It was off the bottom for'), said).toBe(isLifted);
    expect(words.includes('stayed on the bottom'), said).toBe(run.peak_height_m < SKIP_M);
  }
});

test('the runs of this test lie on both sides of the limit, some below it but off the ground', () => {
  const heights = runs.map((run) => run.peak_height_m);
  expect(heights.some((m) => m > OFF_BOTTOM_M)).toBe(true);
  expect(
    heights.some((m) => m > 0 && m < OFF_BOTTOM_M),
    heights.join()
  ).toBe(true);
});
