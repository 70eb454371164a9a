import { expect, test } from 'vitest';
import { readoutAt, readoutUntil_s } from '../../src/lib/sandbox/readout';

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

test('where a sweep at the bite is to bring the bait a way, the picture counts that way as the words do', () => {
  const bite = [{ kind: 'bite', bite: 'tap', t_s: 2 } as const];
  expect(readoutUntil_s(bite, { travel_m: [0.5, 0.7] })).toBe(Infinity);
  expect(readoutUntil_s(bite, null)).toBe(2);
  expect(readoutUntil_s(bite, { height_m: [0, 0.1] })).toBe(2);
});
