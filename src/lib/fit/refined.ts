import { fineShiftOf, valuesAt } from './forecast';
import { descend, iterateAt, residualsOf, type Fitted, type Problem } from './least-squares';

/** A coarse line is off by less than this part of each measurement's deviation: then it does no harm. */
const NO_HARM = 0.3;

export interface Refined {
  readonly problem: Problem;
  readonly fitted: Fitted;
}

/**
 * What was found with the coarse line, put right for it, and widened where the tests contradict one
 * another. The coarse line's error hardly changes with the unknowns: it is worked out once, at the best
 * values, and added to every forecast from there on.
 */
export function refined(coarse: Problem, found: Fitted, tell: (share: number) => void): Refined {
  const { tests, unknowns, known } = coarse;
  const values = valuesAt(unknowns, found.iterate.u, known);
  const shifts = tests.map((test) => fineShiftOf(test, values));
  const fine: Problem = { ...coarse, shifts };
  tell(0.2);
  const isHarmless = fine.measurements.every(
    ({ test, figure }, i) => Math.abs(shifts[test][figure]) < NO_HARM * found.iterate.sd_m[i]
  );
  const here = iterateAt(fine, found.iterate.u);
  const fitted = isHarmless
    ? { ...found, iterate: here }
    : descend(fine, here, (share) => tell(0.2 + 0.4 * share));
  const widened = widenedBy(fine, fitted);
  if (widened === 1) return { problem: fine, fitted };
  const wide: Problem = { ...fine, widened };
  const start = iterateAt(wide, fitted.iterate.u);
  return { problem: wide, fitted: descend(wide, start, (share) => tell(0.6 + 0.4 * share)) };
}

/**
 * 1 for tests that agree as well as their deviations say. Where they scatter more than 19 sessions in 20
 * would, by how much more: by that every deviation is widened (Birge 1932, Physical Review 40). Else a
 * deviation that was said too small, a wrong depth or a slip of the tape would pass for certainty.
 */
function widenedBy(problem: Problem, { iterate }: Fitted): number {
  const count = problem.measurements.length;
  const squares = residualsOf(problem, iterate.forecasts, iterate.sd_m).reduce(
    (sum, r) => sum + r * r,
    0
  );
  return squares > chiSquare95(count) ? Math.sqrt(squares / count) : 1;
}

/** What χ² of so many exceeds once in twenty (Wilson & Hilferty 1931, PNAS 17). */
function chiSquare95(count: number): number {
  const ninth = 2 / (9 * count);
  return count * (1 - ninth + 1.6449 * Math.sqrt(ninth)) ** 3;
}
