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
 * damping and Broyden's slopes (Nocedal & Wright, Numerical Optimization, ch. 10 and 11.1, from memory);
 * steps are clipped to the bounds. It only finds the place; how sure that is, posterior.ts tells.
 */
export interface Problem {
  readonly tests: readonly PoolTest[];
  readonly measurements: readonly Measurement[];
  readonly unknowns: readonly Unknown[];
  readonly known: Values;
  /** Every run that could be made so far is noted here: each costs as much as all the rest. */
  readonly runs: RunAt[];
}

/** What the model says of each measured test at scaled unknowns. */
export interface RunAt {
  readonly u: readonly number[];
  /** By number of the test; none of those of which nothing was measured. */
  readonly forecasts: readonly Forecast[];
}

/** A point in the scaled unknowns with what the model says there. */
export interface Iterate extends RunAt {
  readonly sd_m: readonly number[];
  readonly cost: number;
}

/** A finite difference this wide, in prior deviations, sees past the kinks of contact. */
const DIFFERENCE = 0.25;
const MOST_STEPS = 14;
/** A step that lowers the cost by less than this is the last. */
const ENOUGH = 0.05;

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
    const forecast = forecastOf(problem.tests[test], values);
    if (!forecast) return { u, forecasts: [], sd_m: [], cost: Infinity };
    forecasts[test] = forecast;
  }
  problem.runs.push({ u, forecasts });
  return weighed(problem, { u, forecasts }, sd_m);
}

/** With the deviations that these forecasts have, or with those given. */
function weighed(problem: Problem, { u, forecasts }: RunAt, sd_m?: readonly number[]): Iterate {
  const weights =
    sd_m ??
    problem.measurements.map(({ test, figure, sd_m: said }) =>
      deviationOf(forecasts[test][figure], said)
    );
  const misfit = residualsOf(problem, forecasts, weights).reduce((sum, r) => sum + r * r, 0);
  const prior = u.reduce((sum, one) => sum + one * one, 0);
  return { u, forecasts, sd_m: weights, cost: misfit + prior };
}

/** (measured − predicted) / σ of each measurement. */
function residualsOf(
  { measurements }: Problem,
  forecasts: readonly Forecast[],
  sd_m: readonly number[]
): number[] {
  return measurements.map(
    ({ test, figure, measured_m }, i) => (measured_m - forecasts[test][figure]) / sd_m[i]
  );
}

/** Rows of ∂f/∂u, m, one a measurement: from one side, the one with more room. */
export function slopesAt(problem: Problem, here: Iterate): number[][] {
  const columns = here.u.map((_, j) => columnAt(problem, here, j));
  return problem.measurements.map((_, i) => columns.map((column) => column[i]));
}

function columnAt(problem: Problem, here: Iterate, j: number): number[] {
  const by = here.u[j] > 0 ? -DIFFERENCE : DIFFERENCE;
  const sides = [by, -by].map((width) => ({
    width,
    beside: () => iterateAt(problem, clipped(problem, replaced(here.u, j, here.u[j] + width)))
  }));
  for (const { beside } of sides) {
    const one = beside();
    const width = one.u[j] - here.u[j];
    if (one.cost === Infinity || width === 0) continue;
    return problem.measurements.map(
      ({ test, figure }) => (one.forecasts[test][figure] - here.forecasts[test][figure]) / width
    );
  }
  return problem.measurements.map(() => 0);
}

/** JᵀJ + 1, the curvature of half the cost with the prior in it; `slopes` over their σ. */
function curvatureOf(slopes: Matrix, size: number): number[][] {
  return Array.from({ length: size }, (_, j) =>
    Array.from({ length: size }, (__, k) =>
      slopes.reduce((sum, row) => sum + row[j] * row[k], j === k ? 1 : 0)
    )
  );
}

export const overDeviations = (slopes: Matrix, sd_m: readonly number[]): number[][] =>
  slopes.map((row, i) => row.map((slope) => slope / sd_m[i]));

export interface Fitted {
  readonly iterate: Iterate;
  /** Of the scaled unknowns, were the model straight; a prior alone would be the identity. */
  readonly covariance: Matrix;
}

/** The least cost that can be reached from here. `tell` hears the share done, 0–1. */
export function descend(problem: Problem, from: Iterate, tell: (share: number) => void): Fitted {
  let here = from;
  let slopes = slopesAt(problem, here);
  let isFresh = true;
  let damping = 0.01;
  for (let step = 0; step < MOST_STEPS && damping < 100; step++) {
    tell(step / MOST_STEPS);
    const next = iterateAt(problem, stepFrom(problem, here, slopes, damping), here.sd_m);
    if (next.cost < here.cost) {
      const gain = here.cost - next.cost;
      slopes = broyden(problem, slopes, here, next);
      // The weights follow what is predicted now.
      here = weighed(problem, next);
      if (gain < ENOUGH) break;
      isFresh = false;
      damping = Math.max(damping / 5, 1e-4);
    } else if (isFresh) damping *= 10;
    else {
      slopes = slopesAt(problem, here);
      isFresh = true;
    }
  }
  const curvature = curvatureOf(overDeviations(slopes, here.sd_m), here.u.length);
  return { iterate: here, covariance: inverseOf(curvature) };
}

/** The slopes that agree with the step just made and change least (Broyden 1965). */
function broyden({ measurements }: Problem, slopes: Matrix, from: RunAt, to: RunAt): number[][] {
  const by = to.u.map((one, j) => one - from.u[j]);
  const square = by.reduce((sum, one) => sum + one * one, 0);
  return measurements.map(({ test, figure }, i) => {
    const change = to.forecasts[test][figure] - from.forecasts[test][figure];
    const off = change - slopes[i].reduce((sum, slope, j) => sum + slope * by[j], 0);
    return slopes[i].map((slope, j) => slope + (off * by[j]) / square);
  });
}

/** One damped Gauss–Newton step; what stands at a bound and would leave it is held there. */
function stepFrom(problem: Problem, here: Iterate, slopes: Matrix, damping: number): number[] {
  const { u } = here;
  const rows = overDeviations(slopes, here.sd_m);
  const r = residualsOf(problem, here.forecasts, here.sd_m);
  const down = u.map((one, j) => rows.reduce((sum, row, i) => sum + row[j] * r[i], -one));
  const curvature = curvatureOf(rows, u.length).map((row, j) =>
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

function replaced(u: readonly number[], j: number, by: number): number[] {
  return u.map((one, k) => (k === j ? by : one));
}
