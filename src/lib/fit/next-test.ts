import type { Move } from '../model';
import { inverseOf, logDeterminant, type Matrix } from './cholesky';
import { measurementsOf } from './forecast';
import { iterateAt, overDeviations, slopesAt, type Problem } from './least-squares';
import type { PoolTest } from './session';

/** A move worth trying next, and by what share it shrinks the widths, 0–1. */
export interface NextTest {
  readonly move: Move;
  readonly shrinks: number;
}

/** Moves that a hand at a pool can make and count, of a second or more, and a tape can measure. */
const OFFERED: readonly Move[] = [
  { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 20, duration_s: 1 },
  { kind: 'sweep', from_deg: 30, to_deg: 60, duration_s: 1, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 40, duration_s: 1.5 },
  { kind: 'sweep', from_deg: 0, to_deg: 15, duration_s: 3, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 60, duration_s: 3 },
  { kind: 'sweep', from_deg: 0, to_deg: 40, duration_s: 1, elevation_deg: 0 },
  { kind: 'lift', from_deg: 30, to_deg: 70, duration_s: 1 }
];
const SHOWN = 3;

/**
 * Greedy D-optimal design (Fedorov 1972; Atkinson & Donev, from memory): of the moves offered the one
 * that adds most to the logarithm of the determinant of the information, with the prior in it; then the
 * next one beside it. `shrinks` is the fall of the geometric mean of the widths.
 */
export function nextTests(
  problem: Problem,
  u: readonly number[],
  covariance: Matrix,
  tell: (share: number) => void
): NextTest[] {
  const size = problem.unknowns.length;
  if (size === 0) return [];
  const left = OFFERED.map((move, i) => {
    tell(i / OFFERED.length);
    return { move, rows: rowsOf(problem, u, move) };
  });
  let known = inverseOf(covariance);
  const chosen: NextTest[] = [];
  while (chosen.length < SHOWN && left.length > 0) {
    const before = logDeterminant(known);
    const gains = left.map(({ rows }) => logDeterminant(told(known, rows)) - before);
    const best = gains.indexOf(Math.max(...gains));
    const [{ move, rows }] = left.splice(best, 1);
    chosen.push({ move, shrinks: 1 - Math.exp(-gains[best] / (2 * size)) });
    known = told(known, rows);
  }
  return chosen;
}

/** Information with that of more measurements. */
const told = (known: Matrix, rows: Matrix): number[][] =>
  known.map((line, j) =>
    line.map((value, k) => rows.reduce((sum, row) => sum + row[j] * row[k], value))
  );

/** Slopes over their deviations of a move that was not made yet, were its travel and height measured. */
function rowsOf(problem: Problem, u: readonly number[], move: Move): number[][] {
  const [first] = problem.tests;
  const { setup, hold_s } = first;
  const made = { move, setup, hold_s, hasOwnSlack: false };
  const test: PoolTest = { ...made, travel_m: 0, peak_height_m: 0 };
  const offered: Problem = {
    ...problem,
    tests: [test],
    measurements: measurementsOf([test]),
    runs: []
  };
  const here = iterateAt(offered, u);
  return here.cost < Infinity ? overDeviations(slopesAt(offered, here), here.sd_m) : [];
}
