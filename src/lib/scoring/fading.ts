/** 1 for a miss of 0 or less, 0 from `reach` on, and without a corner between (smoothstep). */
export function fading(miss: number, reach: number): number {
  const u = clamped(miss / reach);
  return 1 - u * u * (3 - 2 * u);
}

export function clamped(share: number): number {
  return Math.min(1, Math.max(0, share));
}
