/** The largest number below 1. */
const LESS_THAN_1 = 1 - Number.EPSILON / 2;

/** 1 for a miss of 0 or less only, 0 from `reach` on, and without a corner between (smoothstep). */
export function fading(miss: number, reach: number): number {
  if (miss <= 0) return 1;
  const u = clamped(miss / reach);
  return Math.min(LESS_THAN_1, 1 - u * u * (3 - 2 * u));
}

export function clamped(share: number): number {
  return Math.min(1, Math.max(0, share));
}
