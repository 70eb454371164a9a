import { TICK_S, type Result } from '../../model';
import { NO_MOVE_M } from '../run-measures';
import type { RunToGrade } from '../run-to-grade';

type Traced = Pick<Result, 'trace'>;

/** Slower than this the bait is at rest, m/s: the model's own limit. */
const REST_SPEED_M_S = 2e-3;
/** Shorter stillness is the turn of a move and no rest, s. */
const SHORTEST_REST_S = 1;
/** A bait that gets no further than this in so many ticks creeps at most: 2 cm/s, m. */
const CREEP_M = 0.005;
const CREEP_TICKS = 25;
/** A bait this far from where it rested has been moved, m: two inches. */
const BAIT_MOVED_M = 0.05;
/** A tip this far from where it was has been moved: less is tremble, or the rod giving, m. */
const TIP_MOVED_M = 0.03;
/** Line drawn and given back in one twitch, m: an inch and more. */
const TWITCH_M = 0.03;
/** Lower flights have no fall to speak of, m. */
const FALL_FROM_M = 0.15;
/** A firm sweep takes up so much line, m, in so many ticks. */
const SWEEP_M = 0.5;
const SWEEP_TICKS = 60;
/** Lower hops are skips, m: an inch. */
const HOP_M = 0.0254;
/** The pull at the end is a mean over this many ticks. */
const END_TICKS = 50;

/** Mean speed of the bait along the bottom while it moved, m/s; 0 for one that never did. */
export function meanBaitSpeed({ trace }: Traced): number {
  const { bait_x_m: x } = trace;
  let way_m = 0;
  let ticks = 0;
  for (let i = 1; i < x.length; i++) {
    const step_m = Math.abs(x[i] - x[i - 1]);
    if (step_m <= REST_SPEED_M_S * TICK_S) continue;
    way_m += step_m;
    ticks++;
  }
  return ticks > 0 ? way_m / (ticks * TICK_S) : 0;
}

/** Share of the bait's level way made at `lowest` to `highest` m above the bottom under it, 0–1. */
export function swumShare(run: RunToGrade, lowest: number, highest: number): number {
  const { bait_x_m: x, bait_z_m: z } = run.result.trace;
  let within_m = 0;
  let way_m = 0;
  for (let i = 1; i < x.length; i++) {
    const step_m = Math.abs(x[i] - x[i - 1]);
    const height_m = z[i] - run.bottomAt(x[i]);
    way_m += step_m;
    if (height_m >= lowest && height_m <= highest) within_m += step_m;
  }
  return way_m > NO_MOVE_M ? within_m / way_m : 0;
}

/** Furthest that the bait got from where it lay, m. */
export function furthestFromStart({ trace }: Traced): number {
  const { bait_x_m: x, bait_z_m: z } = trace;
  return x.reduce((most, at, i) => Math.max(most, Math.hypot(at - x[0], z[i] - z[0])), 0);
}

/** How many times the tip drew line and gave it back. */
export function countTwitches(result: Traced): number {
  const taken = takenLine(result);
  let [low, high, count] = [taken[0], taken[0], 0];
  let isUp = false;
  for (const now of taken) {
    if (isUp) {
      high = Math.max(high, now);
      if (now > high - TWITCH_M) continue;
      count++;
      isUp = false;
      low = now;
    } else {
      low = Math.min(low, now);
      if (now < low + TWITCH_M) continue;
      isUp = true;
      high = now;
    }
  }
  return count;
}

/**
 * How long the bait rested between its moves, s, in order; shorter than a second is none. What it
 * creeps while the line settles is no move.
 */
export function restsBetweenMoves({ trace }: Traced): number[] {
  const { bait_x_m: x, bait_z_m: z } = trace;
  const apart = (i: number, k: number) => Math.hypot(x[i] - x[k], z[i] - z[k]);
  const rests: { from: number; to: number }[] = [];
  let from = 0;
  for (let i = 1; i <= x.length; i++) {
    const isSlow = i < x.length && apart(i, Math.max(0, i - CREEP_TICKS)) < CREEP_M;
    if (isSlow) continue;
    if ((i - from) * TICK_S >= SHORTEST_REST_S) {
      const last = rests.at(-1);
      if (last && apart(last.to, i - 1) < BAIT_MOVED_M) last.to = i - 1;
      else rests.push({ from: Math.max(0, from - CREEP_TICKS), to: i - 1 });
    }
    from = i;
  }
  const end = x.length - 1;
  return rests
    .filter((rest) => apart(rest.from, 0) >= BAIT_MOVED_M && apart(rest.to, end) >= BAIT_MOVED_M)
    .map((rest) => (rest.to - rest.from) * TICK_S);
}

/** Longest over shortest time between hops, 1 or more; 0 for fewer than three hops. */
export function rhythmOf({ hops }: Pick<Result, 'hops'>): number {
  const starts = hops.filter(({ height_m }) => height_m >= HOP_M).map(({ t_s }) => t_s);
  const gaps = starts.slice(1).map((t_s, i) => t_s - starts[i]);
  return gaps.length < 2 ? 0 : Math.max(...gaps) / Math.min(...gaps);
}

/**
 * From the bait's touch of the bottom to the rod's first move, s; negative if the rod was first. A
 * bait that never came down touches at the end, a rod that never moved moves at the end.
 */
export function waitAfterTouch({ trace, events }: Pick<Result, 'trace' | 'events'>): number {
  const { tip_x_m: x, tip_z_m: z, t_s } = trace;
  const moved = x.findIndex((at, i) => Math.hypot(at - x[0], z[i] - z[0]) >= TIP_MOVED_M);
  const end_s = t_s[t_s.length - 1];
  const touch_s = events.find(({ kind }) => kind === 'bottom')?.t_s ?? end_s;
  return (moved === -1 ? end_s : t_s[moved]) - touch_s;
}

/** Pull at the tip at the end, N. */
export function pullAtEnd({ trace }: Traced): number {
  const last = trace.tip_tension_N.slice(-END_TICKS);
  return last.reduce((sum, pull) => sum + pull, 0) / last.length;
}

/** Furthest that a fall brought the bait towards the angler, m, from its highest point to its touch. */
export function largestSwing({ trace }: Traced): number {
  const { bait_x_m: x, bait_z_m: z, contact } = trace;
  const towards = -Math.sign(x[0]);
  let largest_m = 0;
  let top: number | null = null;
  for (let i = 0; i < x.length; i++) {
    if (contact[i] === 0) {
      if (top === null || z[i] >= z[top]) top = i;
      continue;
    }
    if (top !== null && z[top] - z[i] >= FALL_FROM_M) {
      largest_m = Math.max(largest_m, towards * (x[i] - x[top]));
    }
    top = null;
  }
  return largest_m;
}

/** 1 for a hook that let go of its snag, 0.5 if it had been driven home, 0 if it holds or the line broke. */
export function freedOf({ events }: Pick<Result, 'events'>): number {
  const has = (kind: string) => events.some((event) => event.kind === kind);
  const hung = events.filter(({ kind }) => kind === 'snag' || kind === 'freed');
  if (hung.at(-1)?.kind !== 'freed' || has('break')) return 0;
  return has('set deeper') ? 0.5 : 1;
}

/**
 * From the bite to the moment when the rod had swept firmly, s; negative for a sweep before it.
 * Without a sweep, or without a bite, it is the length of the run.
 */
export function strikeDelay({ trace, events }: Pick<Result, 'trace' | 'events'>): number {
  const taken = takenLine({ trace });
  const end_s = trace.t_s[trace.t_s.length - 1];
  const swept = taken.findIndex(
    (now, i) => i > 0 && now - taken[Math.max(0, i - SWEEP_TICKS)] >= SWEEP_M
  );
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s;
  return swept === -1 || bite_s === undefined ? end_s : trace.t_s[swept] - bite_s;
}

/** Line taken up: from the tip to where the bait lay at first, m. */
function takenLine({ trace }: Traced): number[] {
  const { tip_x_m: x, tip_z_m: z, bait_x_m, bait_z_m } = trace;
  return x.map((at, i) => Math.hypot(at - bait_x_m[0], z[i] - bait_z_m[0]));
}
