import { seededRandom } from '../model';
import {
  deviationOf,
  forecastOf,
  measurementsOf,
  valuesAt,
  type Forecast,
  type Measurement
} from './forecast';
import {
  clipped,
  curvatureOf,
  descend,
  iterateAt,
  stepFrom,
  type Fitted,
  type Iterate,
  type Problem
} from './least-squares';
import { inverseOf } from './cholesky';
import { drawOf, nextTests } from './next-test';
import { intervalOf } from './profile';
import type { Estimate, FitResult, Prediction90, TestFit } from './result';
import type { UnknownName } from '../scoring';
import type { OwnSpread, OwnValues } from '../scoring';
import type { Session } from './session';
import { TOLD_BELOW, unknownsOf, Z90 } from './unknowns';
import { verdictOf } from './verdict';

/** Places looked at before the descent: heights are nothing until the bait leaves the bottom. */
const SCOUTS = 10;
/** Draws behind a predicted interval, and measurements made of each. */
const DRAWS = 24;
const NOISE_A_DRAW = 16;
/** With fewer other tests than this nothing is held out. */
const LEAST_OTHERS = 3;

export interface FitOptions {
  /** Hears the share done, 0–1; may throw to stop. */
  tell?: (share: number) => void;
  seed?: number;
}

/**
 * The unknowns of an outfit from what was measured. Pure: the same session gives the same result.
 * Takes about 60 runs of the model a test.
 */
export function fit(session: Session, { tell = () => {}, seed = 1 }: FitOptions = {}): FitResult {
  const random = seededRandom(seed);
  const unknowns = unknownsOf(session);
  const { tests, known } = session;
  const problem: Problem = { tests, measurements: measurementsOf(tests), unknowns, known };
  const fitted = descend(problem, scouted(problem, random), (part) => tell(0.05 + 0.4 * part));
  const estimates = unknowns.map(({ name, at }, j): [UnknownName, Estimate] => {
    tell(0.45 + (0.25 * j) / unknowns.length);
    const [least, most] = intervalOf(problem, fitted, j);
    const { bounds, isTold } = unknowns[j];
    const told = isTold || (most - least) / 2 < TOLD_BELOW * priorHalfWidth(bounds);
    return [name, { estimate: at(fitted.iterate.u[j]), interval90: [at(least), at(most)], told }];
  });
  tell(0.7);
  const predicted = predictions(problem, fitted, random);
  tell(0.8);
  const held_out = heldOut(problem, fitted, random);
  const next = nextTests(problem, fitted.iterate.u, fitted.slopes, (part) =>
    tell(0.9 + 0.1 * part)
  );
  const result = {
    unknowns: Object.fromEntries(estimates),
    tests: tests.map((_, i) => ({ predicted: predicted[i], measured: measuredOf(problem, i) })),
    held_out,
    spread: spreadOf(problem, fitted),
    next
  };
  return { ...result, verdict: verdictOf(result, misfitOf(problem, fitted)) };
}

/** The values found and, along each column of the covariance's factor, the 90 % ends either way. */
function spreadOf(problem: Problem, { iterate: { u }, covariance }: Fitted): OwnSpread {
  const { unknowns } = problem;
  const at = (scaled: readonly number[]): OwnValues =>
    valuesAt(unknowns, clipped(problem, scaled), {});
  const ends = unknowns.flatMap((_, k) =>
    [-Z90, Z90].map((by) =>
      at(
        drawOf(
          u,
          covariance,
          unknowns.map((__, j) => (j === k ? by : 0))
        )
      )
    )
  );
  return { middle: at(u), ends };
}

/** Of a normal prior cut off at the bounds: as wide as what is left of it. */
function priorHalfWidth([least, most]: readonly [number, number]): number {
  return (Math.min(Z90, most) - Math.max(-Z90, least)) / 2;
}

/** The best of a few draws from the prior and its middle. */
function scouted(problem: Problem, random: () => number): Iterate {
  const middle = clipped(
    problem,
    problem.unknowns.map(() => 0)
  );
  const draws = Array.from({ length: SCOUTS }, () =>
    clipped(
      problem,
      problem.unknowns.map(() => normal(random))
    )
  );
  return [middle, ...draws]
    .map((u) => iterateAt(problem, u))
    .reduce((best, one) => (one.cost < best.cost ? one : best));
}

/** Each test at the best values, and over draws from what the tests leave open. */
function predictions(problem: Problem, fitted: Fitted, random: () => number) {
  const { unknowns, known } = problem;
  const { u } = fitted.iterate;
  const draws = Array.from({ length: DRAWS }, () => {
    const z = unknowns.map(() => normal(random));
    return clipped(problem, drawOf(u, fitted.covariance, z));
  });
  return problem.tests.map((test, i): Prediction90 | null => {
    const best = fitted.iterate.forecasts[i] ?? forecastOf(test, valuesAt(unknowns, u, known));
    if (!best) return null;
    const drawn = draws.map(
      (one) =>
        alongSlopes(problem, fitted, i, one) ??
        forecastOf(test, valuesAt(unknowns, one, known)) ??
        best
    );
    const heights = bandOf(
      drawn.map(({ peak_height_m }) => peak_height_m),
      test.height_sd_m,
      random
    );
    return {
      travel_m: best.travel_m,
      travel_interval90: bandOf(
        drawn.map(({ travel_m }) => travel_m),
        test.travel_sd_m,
        random
      ),
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

/** From the 5th to the 95th of a hundred measurements. */
function bandOf(
  drawn_m: readonly number[],
  said_m: number | undefined,
  random: () => number
): [number, number] {
  const measured = drawn_m
    .flatMap((one) =>
      Array.from({ length: NOISE_A_DRAW }, () => one + deviationOf(one, said_m) * normal(random))
    )
    .sort((a, b) => a - b);
  const at = (share: number) => measured[Math.round(share * (measured.length - 1))];
  return [at(0.05), at(0.95)];
}

/** The last measured test from the others: one more step from where all of them led. */
function heldOut(problem: Problem, fitted: Fitted, random: () => number): FitResult['held_out'] {
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
    { ...others, tests: [problem.tests[test]], measurements: [] },
    { iterate: { ...fitted.iterate, u, forecasts: [] }, covariance, slopes: [] },
    random
  );
  return { test, predicted, measured: measuredOf(problem, test) };
}

function measuredOf({ tests }: Problem, i: number): TestFit['measured'] {
  const { travel_m, peak_height_m } = tests[i];
  return {
    ...(travel_m !== undefined && { travel_m }),
    ...(peak_height_m !== undefined && { peak_height_m })
  };
}

/** The measurement that lies furthest from what is predicted, in its deviations. */
function misfitOf({ measurements }: Problem, { iterate }: Fitted) {
  return measurements
    .map(({ test, figure, measured_m }, i) => ({
      test,
      off: Math.abs(measured_m - iterate.forecasts[test][figure]) / iterate.sd_m[i]
    }))
    .reduce((worst, one) => (one.off > worst.off ? one : worst), { test: -1, off: 0 });
}

/** A standard normal number (Box & Muller 1958). */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
