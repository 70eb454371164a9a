import { factorOf, solved, type Matrix } from './cholesky';

/**
 * What the model would say at values where it was not run, from where it was: a Gaussian process with a
 * Matérn 5/2 kernel over a plane (Rasmussen & Williams 2006, eqs. 2.25, 2.26, 4.17 and ch. 2.7). All outputs
 * share one length of correlation, chosen by their marginal likelihood (eq. 5.8); each has its own scale.
 */
export interface Emulator {
  /** Number of outputs. */
  readonly size: number;
  /** Writes each output's value and deviation at `u` into `mean` and `sd`. */
  at(u: readonly number[], mean: Float64Array, sd: Float64Array): void;
}

/** Lengths of correlation tried, in prior deviations: a kink is shorter, a curve longer. */
const LENGTHS = [0.7, 1.2, 2, 3.5];
/** Variance of the plane beside that of what bends, each in units of an output's scale squared. */
const PLANE = 10;
/** Of a single run, the same unit: kinks, and matrices that can be factored. */
const NUGGET = 1e-5;
/** An output that never changes is still not known better than this, m. */
const LEAST_SCALE_M = 1e-4;

interface Trained {
  readonly l: Matrix;
  readonly weights: readonly (readonly number[])[];
  readonly scales: readonly number[];
  readonly likelihood: number;
  readonly length: number;
}

/** From runs at `points`: `values[k][i]` is output k at point i. */
export function emulatorOf(points: Matrix, values: Matrix): Emulator {
  const middles = values.map((ofOne) => ofOne.reduce((sum, y) => sum + y, 0) / ofOne.length);
  const centred = values.map((ofOne, k) => ofOne.map((y) => y - middles[k]));
  const trained = LENGTHS.map((length) => train(points, centred, length)).reduce((best, one) =>
    one.likelihood > best.likelihood ? one : best
  );
  const { l, weights, scales, length } = trained;
  const near = new Float64Array(points.length);
  const rest = new Float64Array(points.length);
  return {
    size: values.length,
    at: (u, mean, sd) => {
      for (let i = 0; i < near.length; i++) near[i] = kernel(u, points[i], length);
      const left = Math.max(kernel(u, u, length) - explained(l, near, rest), 0);
      for (let k = 0; k < scales.length; k++) {
        let sum = middles[k];
        for (let i = 0; i < near.length; i++) sum += weights[k][i] * near[i];
        mean[k] = sum;
        sd[k] = scales[k] * Math.sqrt(left + NUGGET);
      }
    }
  };
}

function train(points: Matrix, centred: Matrix, length: number): Trained {
  const n = points.length;
  const covariance = points.map((a, i) =>
    points.map((b, j) => kernel(a, b, length) + (i === j ? NUGGET : 0))
  );
  const l = factorOf(covariance);
  const weights = centred.map((y) => solved(covariance, y, l));
  const scales = centred.map((y, k) =>
    Math.sqrt(Math.max(dot(y, weights[k]) / n, LEAST_SCALE_M ** 2))
  );
  const halfLogDet = l.reduce((sum, row, i) => sum + Math.log(row[i]), 0);
  const likelihood = -scales.reduce((sum, scale) => sum + n * Math.log(scale) + halfLogDet, 0);
  return { l, weights, scales, likelihood, length };
}

/** A plane and a Matérn 5/2 of scale one. */
function kernel(a: readonly number[], b: readonly number[], length: number): number {
  let [along, apart] = [1, 0];
  for (let j = 0; j < a.length; j++) {
    along += a[j] * b[j];
    apart += (a[j] - b[j]) ** 2;
  }
  const r = Math.sqrt(5 * apart) / length;
  return PLANE * along + (1 + r + (r * r) / 3) * Math.exp(-r);
}

/** |L⁻¹k|², the variance that the runs explain. */
function explained(l: Matrix, k: Float64Array, scratch: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < k.length; i++) {
    const row = l[i];
    let rest = k[i];
    for (let j = 0; j < i; j++) rest -= row[j] * scratch[j];
    scratch[i] = rest / row[i];
    sum += scratch[i] ** 2;
  }
  return sum;
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, one, i) => sum + one * b[i], 0);
