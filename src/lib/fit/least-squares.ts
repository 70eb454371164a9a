import { inverseOf, solved, type Matrix } from './cholesky';
import { deviationOf, forecastOf, valuesAt, type Forecast, type Measurement } from './forecast';
import type { PoolTest } from './session';
import type { Unknown, Values } from './unknowns';

/**
 * Weighted least squares with a prior, in unknowns u scaled to prior deviation one and middle nought:
 *
 *   cost(u) = Σ ((yᵢ − fᵢ(u)) / σᵢ)² + Σ uⱼ²
 *
 * σᵢ is that of the *predicted* value (15 %, at least 2 cm), held while a step is made: with that of the
 * observed one, values that came out small by chance would weigh more. Gauss–Newton with Levenberg's
 * damping; steps are clipped to the bounds. (Nocedal & Wright, Numerical Optimization, ch. 10, from memory.)
 */
export interface Problem {
  readonly tests: readonly PoolTest[];
  readonly measurements: readonly Measurement[];
  readonly unknowns: readonly Unknown[];
  readonly known: Values;
  /** What is added to the forecast of each test for the coarse line it is made with, m; none yet. */
  readonly shifts: readonly Forecast[];
  /** Every deviation is so many times as wide as it is said to be. */
  readonly widened: number;
}

/** A point in the scaled unknowns with what the model says there. */
export interface Iterate {
  readonly u: readonly number[];
  readonly forecasts: readonly Forecast[];
  readonly sd_m: readonly number[];
  readonly cost: number;
}

/** A finite difference this wide, in prior deviations, sees past the kinks of contact. */
const DIFFERENCE = 0.25;
const MOST_STEPS = 8;
/** A step that lowers the cost by less than this is the last. */
const ENOUGH = 0.02;

/** The tests whose outcome is needed: measured ones, or all. */
export function iterateAt(
  problem: Problem,
  u: readonly number[],
  sd_m?: readonly number[]
): Iterate {
  const values = valuesAt(problem.unknowns, u, problem.known);
  const wanted = new Set(problem.measurements.map(({ test }) => test));
  const forecasts: Forecast[] = [];
  for (const test of wanted) {
    const forecast = forecastOf(problem.tests[test], values, problem.shifts[test]);
    if (!forecast) return { u, forecasts: [], sd_m: [], cost: Infinity };
    forecasts[test] = forecast;
  }
  const own = problem.measurements.map(
    ({ test, figure, sd_m: said }) => problem.widened * deviationOf(forecasts[test][figure], said)
  );
  const weights = sd_m ?? own;
  const misfit = residualsOf(problem, forecasts, weights).reduce((sum, r) => sum + r * r, 0);
  const prior = u.reduce((sum, one) => sum + one * one, 0);
  return { u, forecasts, sd_m: weights, cost: misfit + prior };
}

/** (measured − predicted) / σ of each measurement. */
export function residualsOf(
  { measurements }: Pick<Problem, 'measurements'>,
  forecasts: readonly Forecast[],
  sd_m: readonly number[]
): number[] {
  return measurements.map(
    ({ test, figure, measured_m }, i) => (measured_m - forecasts[test][figure]) / sd_m[i]
  );
}

/**
 * Rows of ∂f/∂u over σ, one a measurement: from both sides, or from one where a rough slope will do,
 * which is half the runs.
 */
export function slopesAt(problem: Problem, here: Iterate, isRough = false): number[][] {
  const columns = problem.unknowns.map((_, j) => columnAt(problem, here, j, isRough));
  return problem.measurements.map((_, i) => columns.map((column) => column[i]));
}

function columnAt(problem: Problem, here: Iterate, j: number, isRough: boolean): number[] {
  const { u } = here;
  const [least, most] = problem.unknowns[j].bounds;
  const beside = (at: number) => {
    const one = at === u[j] ? here : iterateAt(problem, replaced(u, j, at), here.sd_m);
    return one.cost < Infinity ? one : here;
  };
  const up = Math.min(u[j] + DIFFERENCE, most);
  const high = beside(up);
  const low = isRough && high !== here ? here : beside(Math.max(u[j] - DIFFERENCE, least));
  const width = high.u[j] - low.u[j];
  return problem.measurements.map(({ test, figure }, i) => {
    if (width === 0) return 0;
    return (high.forecasts[test][figure] - low.forecasts[test][figure]) / width / here.sd_m[i];
  });
}

/** JᵀJ + 1, the curvature of half the cost with the prior in it. */
export function curvatureOf(slopes: Matrix, size: number): number[][] {
  return Array.from({ length: size }, (_, j) =>
    Array.from({ length: size }, (__, k) =>
      slopes.reduce((sum, row) => sum + row[j] * row[k], j === k ? 1 : 0)
    )
  );
}

export interface Fitted {
  readonly iterate: Iterate;
  /** Of the scaled unknowns; a prior alone would be the identity. */
  readonly covariance: Matrix;
  readonly slopes: Matrix;
}

/** The least cost that can be reached from here. `tell` hears the share done, 0–1. */
export function descend(problem: Problem, from: Iterate, tell: (share: number) => void): Fitted {
  let here = from;
  let slopes = slopesAt(problem, here, true);
  let damping = 0.01;
  for (let step = 0; step < MOST_STEPS; step++) {
    tell(step / MOST_STEPS);
    const next = better(problem, here, slopes, damping);
    if (!next) {
      damping *= 10;
      if (damping > 100) break;
      continue;
    }
    const gain = here.cost - next.cost;
    // The weights follow what is predicted now.
    here = iterateAt(problem, next.u);
    if (gain < ENOUGH) break;
    slopes = slopesAt(problem, here, true);
    damping = Math.max(damping / 5, 1e-4);
  }
  slopes = slopesAt(problem, here);
  const size = problem.unknowns.length;
  return { iterate: here, slopes, covariance: inverseOf(curvatureOf(slopes, size)) };
}

function better(problem: Problem, here: Iterate, slopes: Matrix, damping: number): Iterate | null {
  const next = iterateAt(problem, stepFrom(problem, here, slopes, damping), here.sd_m);
  return next.cost < here.cost ? next : null;
}

/** One damped Gauss–Newton step; what stands at a bound and would leave it is held there. */
export function stepFrom(
  problem: Problem,
  here: Iterate,
  slopes: Matrix,
  damping: number
): number[] {
  const { u } = here;
  const r = residualsOf(problem, here.forecasts, here.sd_m);
  const down = u.map((one, j) => slopes.reduce((sum, row, i) => sum + row[j] * r[i], -one));
  const curvature = curvatureOf(slopes, u.length).map((row, j) =>
    row.map((value, k) => (j === k ? value * (1 + damping) : value))
  );
  return clipped(
    problem,
    solved(curvature, down).map((by, j) => u[j] + by)
  );
}

export function clipped({ unknowns }: Pick<Problem, 'unknowns'>, u: readonly number[]): number[] {
  return u.map((one, j) => Math.min(Math.max(one, unknowns[j].bounds[0]), unknowns[j].bounds[1]));
}

export function replaced(u: readonly number[], j: number, by: number): number[] {
  return u.map((one, k) => (k === j ? by : one));
}
