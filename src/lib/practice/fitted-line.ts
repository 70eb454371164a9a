/** A straight line through points, by least squares. */
export interface FittedLine {
  slope: number;
  /** Standard error of the slope. */
  slopeError: number;
  /** From the least x to the largest. */
  span: number;
}

/** The line of `y` over `x`; null for fewer than three points, or where all x are the same. */
export function fitLine(x: readonly number[], y: readonly number[]): FittedLine | null {
  const span = Math.max(...x) - Math.min(...x);
  if (x.length < 3 || !(span > 0)) return null;
  const [middleX, middleY] = [mean(x), mean(y)];
  const across = sum(x.map((one) => (one - middleX) ** 2));
  const slope = sum(x.map((one, i) => (one - middleX) * (y[i] - middleY))) / across;
  const left = sum(y.map((one, i) => (one - middleY - slope * (x[i] - middleX)) ** 2));
  return { slope, slopeError: Math.sqrt(left / (x.length - 2) / across), span };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}
