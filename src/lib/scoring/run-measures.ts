import { contactBeside, isOffBottom, REST_SPEED_M_S, TICK_S, type Result } from '../model';

/** What the measures read of a result. */
type Traced = Pick<Result, 'trace'>;

/** The tip's way is stepped off with dividers set to this, m, so that a hand's tremble adds nothing. */
const DIVIDERS_M = 0.005;
/** Less than this of tip or bait is no move to speak of, m: half an inch. */
export const NO_MOVE_M = 0.0127;
/** Speed is taken over this many ticks: a tenth of a second is about what a hand can tell apart. */
const SPEED_TICKS = 10;

/**
 * How far the tip went, m: the length of its way in the plane of rod and bait. For a sweep that is
 * how far the tip's horizontal distance to the bait changed, for a lift the arc. Never negative.
 */
export function tipTravel({ trace }: Traced): number {
  const { tip_x_m: x, tip_z_m: z } = trace;
  const { way_m, last } = steppedOff(trace);
  const end = x.length - 1;
  return way_m + Math.hypot(x[end] - x[last], z[end] - z[last]);
}

/** How long the tip has moved, s, its rests between included: as it stands beside the rod. */
export function tipSeconds({ trace }: Traced): number {
  const { first, last } = steppedOff(trace);
  return trace.t_s[last] - trace.t_s[first];
}

/** The tip's way with dividers: as far as they step, m, and at which ticks their first and last step end. */
function steppedOff({ tip_x_m: x, tip_z_m: z }: Traced['trace']) {
  let [first, last, way_m] = [0, 0, 0];
  for (let i = 1; i < x.length; i++) {
    const step = Math.hypot(x[i] - x[last], z[i] - z[last]);
    if (step < DIVIDERS_M) continue;
    way_m += step;
    first ||= i;
    last = i;
  }
  return { first, last, way_m };
}

/** Less than this part of its way from where it began, a tip has turned back. */
const TURNED_BACK = 0.9;

/** Whether a tip's way counts there and back. @param off_m how far it is from where it began */
export function hasTurnedBack(off_m: number, way_m: number): boolean {
  return off_m < TURNED_BACK * way_m;
}

/** Travel towards the angler until something bit, m: what a fish takes along is not the hand's. */
export function travelBeforeBite(result: Pick<Result, 'trace' | 'events' | 'travel_m'>): number {
  const bite = result.events.find(({ kind }) => kind === 'bite');
  if (!bite) return result.travel_m;
  const { t_s, bait_x_m: x } = result.trace;
  const at = t_s.findIndex((t) => t >= bite.t_s);
  return -Math.sign(x[0]) * (x[at === -1 ? x.length - 1 : at] - x[0]);
}

/**
 * Share of the bait's moving time that it was on the bottom, 0–1; 1 for a bait that never moved.
 * Unlike the model's contact_fraction, waiting with a resting bait does not raise it, nor does a flight lower
 * than the grain of the bottom lower it.
 */
export function contactWhileMoving({ trace, lifts }: Pick<Result, 'trace' | 'lifts'>): number {
  const { bait_x_m: x, bait_z_m: z } = trace;
  const contact = contactBeside(x.length, lifts);
  let moving = 0;
  let touching = 0;
  for (let i = 1; i < x.length; i++) {
    const way_m = Math.hypot(x[i] - x[i - 1], z[i] - z[i - 1]);
    if (contact[i] === 1 && way_m <= REST_SPEED_M_S * TICK_S) continue;
    moving++;
    if (contact[i] === 1) touching++;
  }
  return moving > 0 ? touching / moving : 1;
}

/** When the bait first left the bottom, s; null of one that never did, or that skipped. */
export function leftBottomAt({ trace, lifts, hops }: Result): number | null {
  const left = lifts.find(({ rise_m }) => isOffBottom(rise_m))?.from;
  return left === undefined || hops.length === 0 ? null : trace.t_s[left];
}

/** Fastest the bait went along the bottom, m/s, as a mean over a tenth of a second. */
export function peakBaitSpeed({ trace }: Traced): number {
  const { bait_x_m: x } = trace;
  let furthest_m = 0;
  for (let i = SPEED_TICKS; i < x.length; i++) {
    furthest_m = Math.max(furthest_m, Math.abs(x[i] - x[i - SPEED_TICKS]));
  }
  return furthest_m / (SPEED_TICKS * TICK_S);
}
