/**
 * Piecewise cubic through given points that never leaves the range of its neighbours, so that a tip
 * which was held still stays still. Fritsch & Carlson 1980 with the slopes of Fritsch & Butland 1984
 * (weighted harmonic mean); two points give a straight line, i.e. a steady pull.
 */
export class MonotoneCubic {
  private readonly slopes: number[];

  /** `xs` increases; both lists have the same length of at least two. */
  constructor(
    private readonly xs: readonly number[],
    private readonly ys: readonly number[]
  ) {
    this.slopes = slopesOf(xs, ys);
  }

  /** Value at `x`; beyond the ends the end values hold. */
  at(x: number): number {
    const { xs, ys, slopes } = this;
    const last = xs.length - 1;
    if (x <= xs[0]) return ys[0];
    if (x >= xs[last]) return ys[last];
    let low = 0;
    let high = last;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (xs[middle] <= x) low = middle;
      else high = middle;
    }
    const h = xs[high] - xs[low];
    const u = (x - xs[low]) / h;
    const rest = 1 - u;
    return (
      rest * rest * (1 + 2 * u) * ys[low] +
      u * u * (3 - 2 * u) * ys[high] +
      h * u * rest * (rest * slopes[low] - u * slopes[high])
    );
  }
}

function slopesOf(xs: readonly number[], ys: readonly number[]): number[] {
  const n = xs.length;
  const secant = (i: number) => (ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]);
  if (n === 2) return [secant(0), secant(0)];
  const slopes = new Array<number>(n);
  for (let i = 1; i < n - 1; i++) {
    const left = secant(i - 1);
    const right = secant(i);
    if (left * right <= 0) {
      slopes[i] = 0;
      continue;
    }
    const leftWidth = xs[i] - xs[i - 1];
    const rightWidth = xs[i + 1] - xs[i];
    const w1 = 2 * rightWidth + leftWidth;
    const w2 = rightWidth + 2 * leftWidth;
    slopes[i] = (w1 + w2) / (w1 / left + w2 / right);
  }
  slopes[0] = endSlope(xs[1] - xs[0], xs[2] - xs[1], secant(0), secant(1));
  slopes[n - 1] = endSlope(
    xs[n - 1] - xs[n - 2],
    xs[n - 2] - xs[n - 3],
    secant(n - 2),
    secant(n - 3)
  );
  return slopes;
}

/** Three-point end slope, limited so that the end piece stays monotone (de Boor's PCHIP rule). */
function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (slope * d0 <= 0) return 0;
  if (d0 * d1 <= 0 && Math.abs(slope) > 3 * Math.abs(d0)) return 3 * d0;
  return slope;
}
