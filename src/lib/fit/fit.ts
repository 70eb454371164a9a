import { seededRandom } from '../model';
import { measurementsOf, runOf, valuesAt } from './forecast';
import {
  clipped,
  descend,
  iterateAt,
  type Fitted,
  type Iterate,
  type Problem
} from './least-squares';
import { heldOut, measuredIn, normal, predictions } from './predictions';
import { drawOf, nextTests } from './next-test';
import { intervalOf } from './profile';
import type { Estimate, FitResult } from './result';
import type { UnknownName } from '../scoring';
import type { OwnSpread, OwnValues } from '../scoring';
import { inside, type Session } from './session';
import { refined } from './refined';
import { TOLD_BELOW, unknownsOf, Z90 } from './unknowns';
import { verdictOf } from './verdict';

/** Places looked at before the descent: heights are nothing until the bait leaves the bottom. */
const SCOUTS = 10;

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
  const measurements = measurementsOf(tests);
  const coarse: Problem = { tests, measurements, unknowns, known, shifts: [], widened: 1 };
  const found = descend(coarse, scouted(coarse, random), (part) => tell(0.05 + 0.25 * part));
  const { problem, fitted } = refined(coarse, found, (part) => tell(0.3 + 0.15 * part));
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
    tests: tests.map((_, i) => ({ predicted: predicted[i], measured: measuredIn(problem, i) })),
    held_out,
    spread: spreadOf(problem, fitted),
    next
  };
  return { ...result, verdict: verdictOf(result, misfitOf(problem, fitted), problem.widened) };
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
function misfitOf({ measurements, widened }: Problem, { iterate }: Fitted) {
  return measurements
    .map(({ test, figure, measured_m }, i) => ({
      test,
      off: (widened * Math.abs(measured_m - iterate.forecasts[test][figure])) / iterate.sd_m[i]
    }))
    .reduce((worst, one) => (one.off > worst.off ? one : worst), { test: -1, off: 0 });
}
