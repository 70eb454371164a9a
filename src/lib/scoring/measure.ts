import type { Result } from '../model';

/** The tip's way is stepped off with dividers set to this, m, so that a hand's tremble adds nothing. */
const DIVIDERS_M = 0.005;
/** Slower than this the bait is at rest, m/s: the model's own limit. */
const REST_SPEED_M_S = 2e-3;
/** Speed is taken over this many ticks: a tenth of a second is about what a hand can tell apart. */
const SPEED_TICKS = 10;

/**
 * How far the tip went, m: the length of its way in the plane of rod and bait. For a sweep that is
 * how far the tip's horizontal distance to the bait changed, for a lift the arc. Never negative.
 */
export function tipTravel({ trace }: Pick<Result, 'trace'>): number {
  const { tip_x_m: x, tip_z_m: z } = trace;
  let last = 0;
  let way_m = 0;
  for (let i = 1; i < x.length; i++) {
    const step = Math.hypot(x[i] - x[last], z[i] - z[last]);
    if (step < DIVIDERS_M) continue;
    way_m += step;
    last = i;
  }
  const end = x.length - 1;
  return way_m + Math.hypot(x[end] - x[last], z[end] - z[last]);
}

/**
 * Share of the bait's moving time that it touched the bottom, 0–1; 1 for a bait that never moved.
 * Unlike the model's contact_fraction, waiting with a resting bait does not raise it.
 */
export function contactWhileMoving({ trace }: Pick<Result, 'trace'>): number {
  const { t_s, bait_x_m, bait_z_m, contact } = trace;
  let moving_s = 0;
  let touching_s = 0;
  for (let i = 1; i < t_s.length; i++) {
    const tick_s = t_s[i] - t_s[i - 1];
    const way = Math.hypot(bait_x_m[i] - bait_x_m[i - 1], bait_z_m[i] - bait_z_m[i - 1]);
    if (contact[i] === 1 && way <= REST_SPEED_M_S * tick_s) continue;
    moving_s += tick_s;
    if (contact[i] === 1) touching_s += tick_s;
  }
  return moving_s > 0 ? touching_s / moving_s : 1;
}

/** Fastest the bait went along the bottom, m/s, as a mean over a tenth of a second. */
export function peakBaitSpeed({ trace }: Pick<Result, 'trace'>): number {
  const { t_s, bait_x_m } = trace;
  let peak = 0;
  for (let i = SPEED_TICKS; i < t_s.length; i++) {
    const way = Math.abs(bait_x_m[i] - bait_x_m[i - SPEED_TICKS]);
    peak = Math.max(peak, way / (t_s[i] - t_s[i - SPEED_TICKS]));
  }
  return peak;
}
