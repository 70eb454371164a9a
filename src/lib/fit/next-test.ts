import type { Move } from '../model';
import { correlated, logDeterminant, type Matrix } from './cholesky';
import { measurementsOf } from './forecast';
import { curvatureOf, iterateAt, slopesAt, type Problem } from './least-squares';
import type { PoolTest } from './session';

/** A move worth trying next, and by what share it shrinks the widths, 0–1. */
export interface NextTest {
  readonly move: Move;
  readonly shrinks: number;
}

/** Moves that a hand at a pool can make and a tape can measure. */
const OFFERED: readonly Move[] = [
  { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 20, duration_s: 0.3 },
  { kind: 'sweep', from_deg: 30, to_deg: 60, duration_s: 0.5, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 40, duration_s: 1.5 },
  { kind: 'sweep', from_deg: 0, to_deg: 15, duration_s: 3, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 60, duration_s: 3 },
  { kind: 'sweep', from_deg: 0, to_deg: 40, duration_s: 0.6, elevation_deg: 0 },
  { kind: 'lift', from_deg: 30, to_deg: 70, duration_s: 0.5 }
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
  slopes: Matrix,
  tell: (share: number) => void
): NextTest[] {
  const size = problem.unknowns.length;
  if (size === 0) return [];
  const left = OFFERED.map((move, i) => {
    tell(i / OFFERED.length);
    return { move, rows: rowsOf(problem, u, move) };
  });
  let known = [...slopes];
  const chosen: NextTest[] = [];
  while (chosen.length < SHOWN && left.length > 0) {
    const before = logDeterminant(curvatureOf(known, size));
    const gains = left.map(
      ({ rows }) => logDeterminant(curvatureOf([...known, ...rows], size)) - before
    );
    const best = gains.indexOf(Math.max(...gains));
    const [{ move, rows }] = left.splice(best, 1);
    chosen.push({ move, shrinks: 1 - Math.exp(-gains[best] / (2 * size)) });
    known = [...known, ...rows];
  }
  return chosen;
}

/** Slopes of a move that was not made yet, were its travel and height measured. */
function rowsOf(problem: Problem, u: readonly number[], move: Move): number[][] {
  const [first] = problem.tests;
  const { setup, hold_s } = first;
  const made = { move, setup, hold_s, hasOwnSlack: false };
  const test: PoolTest = { ...made, travel_m: 0, peak_height_m: 0 };
  const measurements = measurementsOf([test]);
  const offered: Problem = { ...problem, tests: [test], measurements, shifts: [] };
  const here = iterateAt(offered, u);
  return here.cost < Infinity ? slopesAt(offered, here) : [];
}

/** A draw from the estimate with its covariance. */
export function drawOf(u: readonly number[], covariance: Matrix, z: readonly number[]): number[] {
  const by = correlated(covariance, z);
  return u.map((one, j) => one + by[j]);
}
