import { expect, test } from 'vitest';
import { robustMean } from '../../src/lib/practice/robust-mean';

/** Copper in wholemeal flour, µg/g: data set chem of Venables & Ripley, Modern Applied Statistics. */
const copper = [
  2.9, 3.1, 3.4, 3.4, 3.7, 3.7, 2.8, 2.5, 2.4, 2.4, 2.7, 2.2, 5.28, 3.37, 3.03, 3.03, 28.95, 3.77,
  3.4, 2.2, 3.5, 3.6, 3.7, 3.7
];

test('Huber’s proposal 2 gives what Venables & Ripley print for the copper data (4th ed., ch. 5.5)', () => {
  const { value, sd } = robustMean(copper);
  // hubers(chem): mu 3.2055, s 0.67365; they are printed to five figures.
  expect(value).toBeCloseTo(3.2055, 4);
  expect(sd).toBeCloseTo(0.67365, 4);
});
