import { type seededRandom } from '../model';
import { inverseOf } from './cholesky';
import { deviationOf, forecastOf, valuesAt, type Forecast, type Measurement } from './forecast';
import {
  clipped,
  curvatureOf,
  iterateAt,
  stepFrom,
  type Fitted,
  type Problem
} from './least-squares';
import { drawOf } from './next-test';
import type { FitResult, Prediction90, TestFit } from './result';

/** Draws behind a predicted interval, and measurements made of each. */
const DRAWS = 24;
const NOISE_A_DRAW = 16;
/** With fewer other tests than this nothing is held out. */
const LEAST_OTHERS = 3;

type Random = ReturnType<typeof seededRandom>;

/** Each test at the best values, and over draws from what the tests leave open. */
export function predictions(problem: Problem, fitted: Fitted, random: Random) {
  const { unknowns, known, tests, shifts } = problem;
  const { u } = fitted.iterate;
  const draws = Array.from({ length: DRAWS }, () => {
    const z = unknowns.map(() => normal(random));
    return clipped(problem, drawOf(u, fitted.covariance, z));
  });
  const at = (test: number, one: readonly number[]) =>
    forecastOf(tests[test], valuesAt(unknowns, one, known), shifts[test]);
  return tests.map((test, i): Prediction90 | null => {
    const best = fitted.iterate.forecasts[i] ?? at(i, u);
    if (!best) return null;
    const drawn = draws.map((one) => alongSlopes(problem, fitted, i, one) ?? at(i, one) ?? best);
    const band = (figure: keyof Forecast, said_m: number | undefined) =>
      bandOf(
        drawn.map((one) => one[figure]),
        (m) => problem.widened * deviationOf(m, said_m),
        random
      );
    const heights = band('peak_height_m', test.height_sd_m);
    return {
      travel_m: best.travel_m,
      travel_interval90: band('travel_m', test.travel_sd_m),
      peak_height_m: best.peak_height_m,
      height_interval90: [Math.max(0, heights[0]), Math.max(0, heights[1])]
    };
  });
}

/** A test whose travel and height were measured, at other values: its slopes are known. */
function alongSlopes(
  problem: Problem,
  { iterate, slopes }: Fitted,
  test: number,
  u: readonly number[]
): Forecast | null {
  const at = (figure: Measurement['figure']) => {
    const i = problem.measurements.findIndex((one) => one.test === test && one.figure === figure);
    if (i === -1 || !slopes[i]) return null;
    const by = slopes[i].reduce((sum, slope, j) => sum + slope * (u[j] - iterate.u[j]), 0);
    return iterate.forecasts[test][figure] + by * iterate.sd_m[i];
  };
  const [travel_m, peak_height_m] = [at('travel_m'), at('peak_height_m')];
  return travel_m === null || peak_height_m === null ? null : { travel_m, peak_height_m };
}

/** From the 5th to the 95th of a hundred measurements, each off by a deviation of its own. */
function bandOf(
  drawn_m: readonly number[],
  sdOf: (m: number) => number,
  random: Random
): [number, number] {
  const measured = drawn_m
    .flatMap((one) => Array.from({ length: NOISE_A_DRAW }, () => one + sdOf(one) * normal(random)))
    .sort((a, b) => a - b);
  const at = (share: number) => measured[Math.round(share * (measured.length - 1))];
  return [at(0.05), at(0.95)];
}

/** The last measured test from the others: one more step from where all of them led. */
export function heldOut(problem: Problem, fitted: Fitted, random: Random): FitResult['held_out'] {
  const measured = [...new Set(problem.measurements.map(({ test }) => test))];
  const test = measured.at(-1);
  if (test === undefined || measured.length <= LEAST_OTHERS) return null;
  const others: Problem = {
    ...problem,
    measurements: problem.measurements.filter((one) => one.test !== test)
  };
  const slopes = fitted.slopes.filter((_, i) => problem.measurements[i].test !== test);
  const u = stepFrom(others, iterateAt(others, fitted.iterate.u), slopes, 0);
  const covariance = inverseOf(curvatureOf(slopes, u.length));
  const [predicted] = predictions(
    {
      ...others,
      tests: [problem.tests[test]],
      shifts: problem.shifts.slice(test, test + 1),
      measurements: []
    },
    { iterate: { ...fitted.iterate, u, forecasts: [] }, covariance, slopes: [] },
    random
  );
  return { test, predicted, measured: measuredIn(problem, test) };
}

export function measuredIn({ tests }: Problem, i: number): TestFit['measured'] {
  const { travel_m, peak_height_m } = tests[i];
  return {
    ...(travel_m !== undefined && { travel_m }),
    ...(peak_height_m !== undefined && { peak_height_m })
  };
}

/** A standard normal number (Box & Muller 1958). */
export function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
