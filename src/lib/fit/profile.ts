import {
  curvatureOf,
  iterateAt,
  replaced,
  residualsOf,
  clipped,
  type Fitted,
  type Problem
} from './least-squares';
import { solved } from './cholesky';

/**
 * Interval of one unknown by its profile: the values at which the least cost over all the others has
 * risen by 1.645² (90 in 100; Venzon & Moolgavkar 1988, Applied Statistics 37, from memory). The others
 * follow along the slopes found at the best place, and the cost is the model's own.
 */
const Z90 = 1.6449;
const RISE = Z90 * Z90;
const MOST_TURNS = 3;
/** As near as this to the rise wanted is near enough. */
const NEAR = 0.35;

/** Least and greatest scaled value of unknown `j` that the tests allow at 90 in 100. */
export function intervalOf(problem: Problem, fitted: Fitted, j: number): [number, number] {
  return [edgeOf(problem, fitted, j, -1), edgeOf(problem, fitted, j, 1)];
}

function edgeOf(problem: Problem, fitted: Fitted, j: number, side: -1 | 1): number {
  const { iterate, covariance } = fitted;
  const best = iterate.u[j];
  const bound = problem.unknowns[j].bounds[side < 0 ? 0 : 1];
  let reach = Z90 * Math.sqrt(covariance[j][j]);
  let [inside, outside] = [0, Infinity];
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const at = side * Math.min(side * (best + side * reach), side * bound);
    const rise = riseAt(problem, fitted, j, at);
    const isAtBound = at === bound;
    if (isAtBound && rise <= RISE) return bound;
    if (Math.abs(rise - RISE) <= NEAR) return at;
    if (rise < RISE) inside = reach;
    else outside = Math.min(outside, Math.abs(at - best));
    // A parabola through the best place: the reach goes with the root of the rise.
    const next = reach * Math.sqrt(RISE / Math.max(rise, RISE / 9));
    const isBetween = next > inside && next < outside;
    reach = isBetween ? next : outside < Infinity ? (inside + outside) / 2 : inside * 2;
  }
  return side * Math.min(side * (best + side * reach), side * bound);
}

/** How much the least cost over the others has risen where unknown `j` is held at `at`. */
function riseAt(
  problem: Problem,
  { iterate, covariance, slopes }: Fitted,
  j: number,
  at: number
): number {
  const shift = (at - iterate.u[j]) / covariance[j][j];
  const along = iterate.u.map((one, k) => one + covariance[k][j] * shift);
  let here = iterateAt(problem, clipped(problem, replaced(along, j, at)), iterate.sd_m);
  if (here.cost === Infinity) return Infinity;
  // One more step of the others, with the slopes that are known.
  const others = iterate.u.map((_, k) => k).filter((k) => k !== j);
  if (others.length > 0) {
    const r = residualsOf(problem, here.forecasts, iterate.sd_m);
    const down = others.map((k) => slopes.reduce((sum, row, i) => sum + row[k] * r[i], -here.u[k]));
    const curvature = curvatureOf(slopes, iterate.u.length);
    const by = solved(
      others.map((a) => others.map((b) => curvature[a][b])),
      down
    );
    const moved = here.u.map((one, k) => (k === j ? at : one + by[others.indexOf(k)]));
    const next = iterateAt(problem, clipped(problem, moved), iterate.sd_m);
    if (next.cost < here.cost) here = next;
  }
  return here.cost - iterate.cost;
}
