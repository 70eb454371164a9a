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

/** Values further than so many scales from the middle count as if they lay there (Huber 1981). */
const HELD_AT = 1.5;
/** E[min(z², k²)] of a normal z at k = HELD_AT: makes the scale that of a normal distribution. */
const HELD_VARIANCE = 0.7784652;
/** Median distance from the median of a normal distribution, in standard deviations. */
const MAD_OF_SD = 0.6744898;
const ROUNDS = 100;

/**
 * Huber's proposal 2: location and scale together (Huber 1981, Robust Statistics, 6.4; Venables &
 * Ripley, MASS, hubers()). With x̂ the values held at m ± k·s: m = mean(x̂) and
 * s² = Σ(x̂ − m)²/(n − 1)/β. The band is t·√(V/n), V the sandwich variance at the held values,
 * Σ(x̂ − m)²/(n − 1)/(share not held)². Throws RangeError for fewer than two values.
 */
export function robustMean(values: readonly number[]): RobustMean {
  const count = values.length;
  if (count < 2) throw new RangeError(`values must be two or more, got ${count}`);
  let value = median(values);
  let scale = median(values.map((x) => Math.abs(x - value))) / MAD_OF_SD;
  if (scale === 0) scale = spread(values, mean(values));
  for (let round = 0; round < ROUNDS; round++) {
    const held = heldBack(values, value, scale);
    value = mean(held);
    scale = spread(held, value) / Math.sqrt(HELD_VARIANCE);
  }
  const held = heldBack(values, value, scale);
  const free = values.filter((x, i) => x === held[i]).length / count;
  const band = halfWidthOf(spread(held, value) / free, count);
  return { value, band, sd: scale, count };
}

/** Half width of the band of a mean of `count` values with this standard deviation. */
export function halfWidthOf(sd: number, count: number): number {
  return (studentQuantile((1 + CONFIDENCE) / 2, count - 1) * sd) / Math.sqrt(count);
}

/** The middle of the values, or the mean of the two there. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

function heldBack(values: readonly number[], middle: number, scale: number): number[] {
  const reach = HELD_AT * scale;
  return values.map((x) => Math.min(middle + reach, Math.max(middle - reach, x)));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, x) => sum + x, 0) / values.length;
}

function spread(values: readonly number[], middle: number): number {
  const squares = values.reduce((sum, x) => sum + (x - middle) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}
