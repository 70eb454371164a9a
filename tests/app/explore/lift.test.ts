import { expect, test } from 'vitest';
import { AXES } from '../../../src/lib/app/explore/axes';
import { firstLift } from '../../../src/lib/app/explore/base';
import { liftWords } from '../../../src/lib/app/explore/said';
import { OUNCE_KG, simulate } from '../../../src/lib/model';
import { base, made } from './asked-chart';

test('weight hardly tells on a quick lift, and does on a slow one', () => {
  const lift = firstLift(base);
  const high = (ounces: number, s: number) =>
    simulate(made(AXES.weight.set(AXES.pace.set(lift, s), ounces * OUNCE_KG))).peak_height_m;
  expect(high(1.25, 0.5) / high(0.25, 0.5)).toBeGreaterThan(0.9);
  expect(high(1.25, 3) / high(0.25, 3)).toBeLessThan(0.5);
});

test('braid lifts a jig higher than mono of any pound test, at any pace of a lift', () => {
  const lift = firstLift(base);
  const high = (line: number, s: number) =>
    simulate(made(AXES.line.set(AXES.pace.set(lift, s), line))).peak_height_m;
  for (const s of [0.5, 1, 2, 4]) {
    const heights = [0, 1, 2, 3, 4, 5, 6, 7].map((line) => high(line, s));
    const [mono, braid] = [heights.slice(0, 6), heights.slice(6)];
    expect(Math.min(...braid)).toBeGreaterThan(Math.max(...mono));
  }
});

test('who goes from a sweep to a lift is told that the cast and the time are others', () => {
  const lift = firstLift(base);
  const says = liftWords('imperial').replaceAll('\u00a0', ' ');
  expect(says).toContain(AXES.cast.text(AXES.cast.of(lift), 'imperial').replaceAll('\u00a0', ' '));
  expect(says).toContain(AXES.pace.text(AXES.pace.of(lift), 'imperial').replaceAll('\u00a0', ' '));
});
