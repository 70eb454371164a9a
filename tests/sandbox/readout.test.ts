import { expect, test } from 'vitest';
import { readoutAt } from '../../src/lib/sandbox/readout';

const series = {
  t_s: [0, 1, 2, 3],
  tipTravel_m: [0, 0.2, 0.3, 1.1],
  baitTravel_m: [0, 0.1, 0.25, 0.9],
  height_m: [0, 0, 0.02, 0],
  contact: [1, 1, 0, 1] as (0 | 1)[]
};

test('the way that a fish takes the bait along is not counted as moved', () => {
  expect(readoutAt(series, 3, 0).bait_m).toBe(0.9);
  expect(readoutAt(series, 3, 0, 2).bait_m).toBe(0.25);
  expect(readoutAt(series, 1, 0, 2).bait_m).toBe(0.1);
});

test('what the tip did goes on after the bite', () => {
  expect(readoutAt(series, 3, 0, 2).tip_m).toBe(1.1);
});
