/**
 * Quantile of Student's t for `freedom` ≥ 1 degrees of freedom, at `p` from 0.5 to below 1. Exact for
 * 1 and 2 degrees of freedom, else by expansion about the normal quantile (Abramowitz & Stegun
 * 26.7.5): off by less than 1 % from 3 degrees on at p ≤ 0.975.
 */
export function studentQuantile(p: number, freedom: number): number {
  if (!(p >= 0.5 && p < 1)) throw new RangeError(`p must be from 0.5 to below 1, got ${p}`);
  if (!(freedom >= 1)) throw new RangeError(`freedom must be 1 or more, got ${freedom}`);
  if (freedom === 1) return Math.tan(Math.PI * (p - 0.5));
  if (freedom === 2) return (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
  const z = normalQuantile(p);
  const terms = [
    (z ** 3 + z) / 4,
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96,
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384,
    (79 * z ** 9 + 776 * z ** 7 + 1482 * z ** 5 - 1920 * z ** 3 - 945 * z) / 92160
  ];
  return terms.reduce((sum, term, i) => sum + term / freedom ** (i + 1), z);
}

/** Upper normal quantile, off by less than 4.5e-4 (Abramowitz & Stegun 26.2.23). */
function normalQuantile(p: number): number {
  if (p === 0.5) return 0;
  const t = Math.sqrt(-2 * Math.log(1 - p));
  const above = 2.515517 + t * (0.802853 + t * 0.010328);
  return t - above / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
}

/**
 * Share of Student's t for a whole number `freedom` ≥ 1 of degrees of freedom that lies below `t`. Exact
 * (Abramowitz & Stegun 26.7.3 and 26.7.4: finite sums over powers of a cosine).
 */
export function studentShareBelow(t: number, freedom: number): number {
  if (!(freedom >= 1 && Number.isInteger(freedom)))
    throw new RangeError(`freedom must be a whole number from 1 on, got ${freedom}`);
  const angle = Math.atan(t / Math.sqrt(freedom));
  const squared = Math.cos(angle) ** 2;
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? Math.cos(angle) : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = isOdd ? 2 : 1; k <= freedom - 3; k += 2) {
    term *= (k / (k + 1)) * squared;
    sum += term;
  }
  const within = Math.sin(angle) * sum;
  return 0.5 + 0.5 * (isOdd ? (2 / Math.PI) * (angle + within) : within);
}
