import { seededRandom, type Random } from '../model';
import type { OwnSpread, OwnValues, UnknownName } from '../scoring';
import { correlated, type Matrix } from './cholesky';
import {
  deviationOf,
  fineShiftOf,
  measurementsOf,
  runOf,
  valuesAt,
  type Forecast
} from './forecast';
import { covarianceOf, interval90Of } from './interval';
import { clipped, descend, iterateAt, type Iterate, type Problem } from './least-squares';
import { nextTests } from './next-test';
import { normal } from './normal';
import { posteriorOf } from './posterior';
import { heldOut, measuredIn, middleOf, predictions, type FitFound } from './predictions';
import type { Estimate, FitResult } from './result';
import { inside, type Session } from './session';
import { TOLD_BELOW, unknownsOf, Z90 } from './unknowns';
import { verdictOf, type Misfit } from './verdict';

/** Places looked at before the descent: heights are nothing until the bait leaves the bottom. */
const SCOUTS = 8;

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
  const found = foundFor(session, random, (share) => tell(0.7 * share));
  const { problem, posterior, u } = found;
  const covariance = covarianceOf(posterior.samples, u);
  const estimates = problem.unknowns.map(
    ({ name, at, bounds, isTold }, j): [UnknownName, Estimate] => {
      const [least, most] = interval90Of(posterior.samples, j, bounds);
      const told = isTold || (most - least) / 2 < TOLD_BELOW * priorHalfWidth(bounds);
      return [name, { estimate: at(u[j]), interval90: [at(least), at(most)], told }];
    }
  );
  tell(0.7);
  const predicted = predictions(found, random);
  tell(0.8);
  const held_out = heldOut(found, random);
  const next = nextTests(problem, u, covariance, (part) => tell(0.85 + 0.15 * part));
  const result = {
    unknowns: Object.fromEntries(estimates),
    tests: problem.tests.map((_, i) => ({
      predicted: predicted[i],
      measured: measuredIn(problem, i)
    })),
    held_out,
    spread: spreadOf(problem, u, covariance),
    next
  };
  const { samples } = posterior;
  const scatter = samples.reduce((sum, one) => sum + one.scatter, 0) / samples.length;
  return { ...result, verdict: verdictOf(result, misfitsOf(found), scatter) };
}

/** The best place, then all that the tests leave open around it. */
function foundFor(session: Session, random: Random, tell: (share: number) => void): FitFound {
  const { tests, known } = session;
  const unknowns = unknownsOf(session);
  const problem: Problem = {
    ...{ tests, measurements: measurementsOf(tests), unknowns, known, runs: [] }
  };
  const fitted = descend(problem, scouted(problem, random), (part) => tell(0.1 + 0.3 * part));
  const values = valuesAt(unknowns, fitted.iterate.u, known);
  const shifts = tests.map((test): Forecast => fineShiftOf(test, values));
  tell(0.45);
  const posterior = posteriorOf(problem, fitted, shifts, random, (part) =>
    tell(0.45 + 0.55 * part)
  );
  return { problem, posterior, shifts, u: middleOf(posterior.samples) };
}

/** The values found and, along each column of the covariance's factor, the 90 % ends either way. */
function spreadOf(problem: Problem, u: readonly number[], covariance: Matrix): OwnSpread {
  const { unknowns } = problem;
  const at = (scaled: readonly number[]): OwnValues =>
    valuesAt(unknowns, clipped(problem, scaled), {});
  const ends = unknowns.flatMap((_, k) =>
    [-Z90, Z90].map((by) => {
      const along = unknowns.map((__, j) => (j === k ? by : 0));
      const off = correlated(covariance, along);
      return at(u.map((one, j) => one + off[j]));
    })
  );
  return { middle: at(u), ends };
}

/** Of a normal prior cut off at the bounds: as wide as what is left of it. */
function priorHalfWidth([least, most]: readonly [number, number]): number {
  return (Math.min(Z90, most) - Math.max(-Z90, least)) / 2;
}

/** The best of a few draws from the prior and its middle. */
function scouted(problem: Problem, random: Random): Iterate {
  const drawn = (of: () => number) =>
    clipped(
      problem,
      problem.unknowns.map(() => of())
    );
  const middle = drawn(() => 0);
  const draws = Array.from({ length: SCOUTS }, () => drawn(() => normal(random)));
  const best = [middle, ...draws]
    .map((u) => iterateAt(problem, u))
    .reduce((best, one) => (one.cost < best.cost ? one : best));
  if (best.cost === Infinity) refuse(problem, middle);
  return best;
}

/** Names the test that no such outfit can make. */
function refuse({ tests, unknowns, known }: Problem, u: readonly number[]): void {
  const values = valuesAt(unknowns, u, known);
  tests.forEach((test, i) => inside(`tests.${i}`, () => runOf(test, values)));
}

/** The measurement that lies furthest from what is predicted, in the deviations it was said to have. */
function misfitsOf({ problem, posterior, u }: FitFound): Misfit[] {
  const predicted_m = posterior.saidAt(u);
  return problem.measurements.map(({ test, measured_m, sd_m }, i) => ({
    test,
    off: Math.abs(measured_m - predicted_m[i]) / deviationOf(predicted_m[i], sd_m)
  }));
}
