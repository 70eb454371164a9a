export interface Slope {
  readonly per_s: number;
  readonly sd_per_s: number;
}

/** Seconds to each side that a speed is taken over: shorter is noise, longer flattens a hop. */
const HALF_WINDOW_S = 0.07;
/** At least so many samples on each side, where frames are few. */
const LEAST_EACH_SIDE = 2;

/**
 * Speed at sample `i`: the slope of a straight line through the samples about it, by least squares
 * over their own times. Null where fewer than three are near.
 */
export function localSlope(
  t_s: readonly number[],
  values: readonly number[],
  sd: number,
  i: number
): Slope | null {
  const isNear = (k: number) =>
    Math.abs(t_s[k] - t_s[i]) <= HALF_WINDOW_S || Math.abs(k - i) <= LEAST_EACH_SIDE;
  const near = [i];
  for (let k = i - 1; k >= 0 && isNear(k); k--) near.push(k);
  for (let k = i + 1; k < t_s.length && isNear(k); k++) near.push(k);
  if (near.length < 3) return null;
  const mean_s = near.reduce((sum, k) => sum + t_s[k], 0) / near.length;
  const spread = near.reduce((sum, k) => sum + (t_s[k] - mean_s) ** 2, 0);
  const cross = near.reduce((sum, k) => sum + (t_s[k] - mean_s) * values[k], 0);
  return { per_s: cross / spread, sd_per_s: sd / Math.sqrt(spread) };
}
