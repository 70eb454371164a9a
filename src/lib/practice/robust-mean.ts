import { CONFIDENCE } from './design';
import { studentQuantile } from './student';

/** A middle that a few wild tries do not move, with the band in which it lies. */
export interface RobustMean {
  value: number;
  /** Half width of the band at CONFIDENCE, in the unit of the values. */
  band: number;
  /** Standard deviation of one value, wild ones held back. */
  sd: number;
  count: number;
}

/** Values within so many scales of the middle count in full: 95 % efficient (Huber 1964). */
const HUBER_K = 1.345;
/** MAD of a normal distribution, in standard deviations. */
const MAD_OF_SD = 0.6744897501960817;
const ROUNDS = 50;

/**
 * Huber's M-estimate of location with the scale fixed at the MAD, and a band from its asymptotic
 * variance with the small-sample factor n − 1 (Huber & Ronchetti 2009, Robust Statistics, ch. 6):
 * V = s² · Σψ²/(n − 1) / (Σψ′/n)², band = t · √(V/n). Throws RangeError for fewer than two values.
 */
export function robustMean(values: readonly number[]): RobustMean {
  const count = values.length;
  if (count < 2) throw new RangeError(`values must be two or more, got ${count}`);
  const middle = median(values);
  const scale = median(values.map((value) => Math.abs(value - middle))) / MAD_OF_SD;
  if (scale === 0) return plainMean(values);
  let value = middle;
  for (let round = 0; round < ROUNDS; round++) {
    value += (scale * sum(values, (x) => held((x - value) / scale))) / count;
  }
  const squares = sum(values, (x) => held((x - value) / scale) ** 2) / (count - 1);
  const inside = sum(values, (x) => (Math.abs(x - value) <= HUBER_K * scale ? 1 : 0)) / count;
  const sd = (scale * Math.sqrt(squares)) / inside;
  return { value, sd, count, band: bandOf(sd, count) };
}

/** Half width of the band of a mean of `count` values with this standard deviation. */
export function bandOf(sd: number, count: number): number {
  return (studentQuantile((1 + CONFIDENCE) / 2, count - 1) * sd) / Math.sqrt(count);
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/** More than half of the values are the same: the MAD is no scale then. */
function plainMean(values: readonly number[]): RobustMean {
  const count = values.length;
  const value = sum(values, (x) => x) / count;
  const sd = Math.sqrt(sum(values, (x) => (x - value) ** 2) / (count - 1));
  return { value, sd, count, band: bandOf(sd, count) };
}

function held(residual: number): number {
  return Math.min(HUBER_K, Math.max(-HUBER_K, residual));
}

function sum(values: readonly number[], of: (value: number) => number): number {
  return values.reduce((total, value) => total + of(value), 0);
}
