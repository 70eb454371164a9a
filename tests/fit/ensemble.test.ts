import { expect, test } from 'vitest';
import { stretchWalkers, type Walker } from '../../src/lib/fit/ensemble';
import { covarianceOf, interval90Of } from '../../src/lib/fit/interval';
import { middleOf } from '../../src/lib/fit/predictions';
import { seededRandom } from '../../src/lib/model';

/** Normal, with deviations 1 and 0.1 across a slope: long and narrow. */
const logDensity = ([a, b]: readonly number[]) => -(a * a) / 2 - ((b - 2 * a) / 0.1) ** 2 / 2;

/** `steps` rounds of twenty walkers that begin where it is not. */
function sampleOf(density: (at: readonly number[]) => number, steps: number) {
  const random = seededRandom(5);
  const walkers: Walker[] = Array.from({ length: 20 }, () => {
    const at = [0.5 + random(), 1 + random()];
    return { at, log: density(at) };
  });
  stretchWalkers(walkers, density, 200, random);
  return Array.from({ length: steps }, () => {
    stretchWalkers(walkers, density, 10, random);
    return walkers.map(({ at }) => ({ u: at, scatter: 1 }));
  }).flat();
}

test('a long narrow density is sampled with its middle and its covariance', () => {
  const samples = sampleOf(logDensity, 300);
  const middle = middleOf(samples);
  const covariance = covarianceOf(samples, middle);
  // 6,000 that hang together over some ten draws: a deviation of 0.04, and three of it.
  expect(Math.abs(middle[0])).toBeLessThan(0.12);
  expect(Math.abs(covariance[0][0] - 1)).toBeLessThan(0.17);
  expect(Math.abs(covariance[0][1] - 2)).toBeLessThan(0.34);
  const [least, most] = interval90Of(samples, 0, [-50, 50]);
  expect(Math.abs(least + 1.645)).toBeLessThan(0.2);
  expect(Math.abs(most - 1.645)).toBeLessThan(0.2);
});

test('what lies against a bound has an interval that begins there', () => {
  const bounded = ([a, b]: readonly number[]) => (a < 0 ? -Infinity : logDensity([a, b]));
  const [least, most] = interval90Of(sampleOf(bounded, 200), 0, [0, 50]);
  expect(least).toBe(0);
  // Half a normal distribution has nine tenths below 1.645.
  expect(Math.abs(most - 1.645)).toBeLessThan(0.2);
});
