import { quantile } from './predictions';
import type { Sample } from './posterior';

/**
 * Where nine in ten of a sample of unknown `j` lie: its middle, or, where that is shorter, from a bound on.
 * Slack that was nought is inside the interval of a test that says "little".
 */
export function interval90Of(
  samples: readonly Sample[],
  j: number,
  [least, most]: readonly [number, number]
): [number, number] {
  const sorted = samples.map(({ u }) => u[j]).sort((a, b) => a - b);
  const at = (share: number) => quantile(sorted, share);
  const offered: [number, number][] = [
    [at(0.05), at(0.95)],
    [least, at(0.9)],
    [at(0.1), most]
  ];
  return offered.reduce((best, one) => (one[1] - one[0] < best[1] - best[0] ? one : best));
}

/** Of the scaled unknowns in a sample. */
export function covarianceOf(samples: readonly Sample[], middle: readonly number[]): number[][] {
  return middle.map((a, j) =>
    middle.map(
      (b, k) => samples.reduce((sum, { u }) => sum + (u[j] - a) * (u[k] - b), 0) / samples.length
    )
  );
}
