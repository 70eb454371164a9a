import { REST_SPEED_M_S, TICK_S, type Result } from '../../model';
import { NO_MOVE_M } from '../run-measures';
import type { RunToGrade } from '../run-to-grade';

type Traced = Pick<Result, 'trace'>;

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
/** Pace is a mean over so many ticks: shorter bursts are the line's, not the hand's. */
const PACE_TICKS = 24;
/** Part of its way at either end of its pace that is not looked at: starting and stopping. */
const PACE_TAIL = 0.05;
/** A tip that gets no further than this in so many ticks rests: a pause after a twitch, m. */
const TIP_REST_M = 0.01;
const TIP_REST_TICKS = 20;
/** The tip's speed is a mean over so many ticks: less than the quickest wrist needs for a hop. */
const TIP_SPEED_TICKS = 3;
/** A firm sweep takes up so much line, m, in so many ticks. */
const SWEEP_M = 0.5;
const SWEEP_TICKS = 60;
/** The pull at the end is a mean over this many ticks. */
const END_TICKS = 50;

/** Travel towards the angler less what the bait went while the reel turned, m. */
export function travelByRod({ result, lineIn_m }: RunToGrade): number {
  const { bait_x_m: x, t_s } = result.trace;
  const towards = -Math.sign(x[0]);
  let reeled_m = 0;
  for (let i = 1; i < x.length; i++) {
    if (isReeling(lineIn_m, t_s[i])) reeled_m += towards * (x[i] - x[i - 1]);
  }
  return result.travel_m - reeled_m;
}

/** Line that the reel took in while the bait lay still, m: slack recovered. */
export function slackReeled({ result, lineIn_m }: RunToGrade): number {
  const { bait_x_m: x, t_s } = result.trace;
  let line_m = 0;
  for (let i = 1; i < x.length; i++) {
    const isStill = Math.abs(x[i] - x[Math.max(0, i - CREEP_TICKS)]) < CREEP_M;
    if (isStill) line_m += lineIn_m(t_s[i]) - lineIn_m(t_s[i - 1]);
  }
  return line_m;
}

function isReeling(lineIn_m: RunToGrade['lineIn_m'], t_s: number): boolean {
  return lineIn_m(t_s) - lineIn_m(t_s - TICK_S) > 0;
}

/**
 * The slow and the fast end of the bait's pace along the bottom, m/s, as means over a quarter of a
 * second: a twentieth of its way by the rod was slower than the one, and as much faster than the other.
 * Both 0 for a bait that never moved.
 */
export function paceEnds({ result, lineIn_m }: RunToGrade): [slow: number, fast: number] {
  const { bait_x_m: x, t_s } = result.trace;
  const steps: { pace_m_s: number; way_m: number }[] = [];
  for (let i = 1; i < x.length; i++) {
    const way_m = Math.abs(x[i] - x[i - 1]);
    if (way_m <= REST_SPEED_M_S * TICK_S || isReeling(lineIn_m, t_s[i])) continue;
    const from = Math.max(0, i - PACE_TICKS / 2);
    const to = Math.min(x.length - 1, i + PACE_TICKS / 2);
    steps.push({ pace_m_s: Math.abs(x[to] - x[from]) / ((to - from) * TICK_S), way_m });
  }
  steps.sort((a, b) => a.pace_m_s - b.pace_m_s);
  const whole_m = steps.reduce((sum, { way_m }) => sum + way_m, 0);
  const at = (share: number) => {
    let way_m = 0;
    return steps.find((step) => (way_m += step.way_m) >= share * whole_m)?.pace_m_s ?? 0;
  };
  return [at(PACE_TAIL), at(1 - PACE_TAIL)];
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

/** How many times the tip drew line, gave it back, and rested for a fifth of a second. */
export function countTwitches(result: Traced): number {
  const taken = takenLine(result);
  let [low, high, count] = [taken[0], taken[0], 0];
  let isUp = false;
  let isDone = false;
  let [restedAt, restedFrom] = [taken[0], 0];
  for (const [i, now] of taken.entries()) {
    if (Math.abs(now - restedAt) >= TIP_REST_M) [restedAt, restedFrom] = [now, i];
    if (isDone && i - restedFrom >= TIP_REST_TICKS) {
      count++;
      isDone = false;
    }
    if (isUp) {
      high = Math.max(high, now);
      if (now > high - TWITCH_M) continue;
      isDone = true;
      isUp = false;
      low = now;
    } else {
      low = Math.min(low, now);
      if (now < low + TWITCH_M) continue;
      isUp = true;
      isDone = false;
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
  const starts = hops.map(({ t_s }) => t_s);
  const gaps = starts.slice(1).map((t_s, i) => t_s - starts[i]);
  return gaps.length < 2 ? 0 : Math.max(...gaps) / Math.min(...gaps);
}

/**
 * From the bait's touch of the bottom to the rod's first move, s; negative if the rod was first,
 * infinite if it never moved. A bait that never came down touches at the end.
 */
export function waitAfterTouch({ trace, events }: Pick<Result, 'trace' | 'events'>): number {
  const { tip_x_m: x, tip_z_m: z, t_s } = trace;
  const moved = x.findIndex((at, i) => Math.hypot(at - x[0], z[i] - z[0]) >= TIP_MOVED_M);
  const end_s = t_s[t_s.length - 1];
  const touch_s = events.find(({ kind }) => kind === 'bottom')?.t_s ?? end_s;
  return (moved === -1 ? Infinity : t_s[moved]) - touch_s;
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

/** What came of a hook and a snag, see SNAG_ENDS. */
export type SnagEnd = keyof typeof SNAG_ENDS;

/** How well that is: a hook that let go, also if it hung again later, is free. */
export const SNAG_ENDS = {
  freed: 1,
  'freed, but driven home first': 0.5,
  'never hung': 0,
  'not freed': 0,
  'line broke': 0
} as const;

export function snagEnd({ events }: Pick<Result, 'events'>): SnagEnd {
  const at = (kind: string) => events.findIndex((event) => event.kind === kind);
  if (at('break') >= 0) return 'line broke';
  if (at('snag') < 0) return 'never hung';
  if (at('freed') < 0) return 'not freed';
  const deeper = at('set deeper');
  return deeper >= 0 && deeper < at('freed') ? 'freed, but driven home first' : 'freed';
}

/**
 * From the bite to the moment when the rod had swept firmly, s: negative for a sweep before it, minus
 * infinity for one where nothing bit, infinity for a bite without a sweep. NaN where nothing bit and
 * the rod was kept still, as it should be.
 */
export function strikeDelay({ trace, events }: Pick<Result, 'trace' | 'events'>): number {
  const swept = firmSweep({ trace });
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s;
  if (bite_s === undefined) return swept === null ? NaN : -Infinity;
  return swept === null ? Infinity : trace.t_s[swept] - bite_s;
}

/** How far the rod drew the bait towards the angler before bite or strike, whichever was first, m. */
export function drawnFirst({ result, lineIn_m }: RunToGrade): number {
  const { trace, events } = result;
  const { bait_x_m: x, t_s } = trace;
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s ?? Infinity;
  const swept = firmSweep({ trace });
  const struck_s = swept === null ? Infinity : t_s[Math.max(0, swept - SWEEP_TICKS)];
  let drawn_m = 0;
  for (let i = 1; i < x.length && t_s[i] < Math.min(bite_s, struck_s); i++) {
    if (!isReeling(lineIn_m, t_s[i])) drawn_m -= Math.sign(x[0]) * (x[i] - x[i - 1]);
  }
  return drawn_m;
}

/** The tick at which the rod had swept firmly, or null. */
function firmSweep({ trace }: Traced): number | null {
  const taken = takenLine({ trace });
  const swept = taken.findIndex(
    (now, i) => i > 0 && now - taken[Math.max(0, i - SWEEP_TICKS)] >= SWEEP_M
  );
  return swept === -1 ? null : swept;
}

/** Share of the line that the tip had drawn at most which it had given back at the end, 0–1. */
export function loweredShare(result: Traced): number {
  const taken = takenLine(result);
  const most = Math.max(...taken);
  const drawn_m = most - taken[0];
  if (drawn_m < TIP_MOVED_M) return 0;
  return Math.min(1, Math.max(0, (most - taken[taken.length - 1]) / drawn_m));
}

/**
 * How closely the rod went down with the falling bait, 0–1. Over the highest fall: 1 less twice the
 * mean gap between the part of its way that the tip has given back and the part that the bait has
 * fallen, so that a rod that is held, and one dropped at once, both get nothing.
 */
export function followedShare(result: Traced): number {
  const fall = highestFall(result);
  if (!fall) return 0;
  const { bait_z_m: z } = result.trace;
  const taken = takenLine(result);
  const fallen_m = z[fall.top] - z[fall.end];
  const given_m = taken[fall.top] - Math.min(...taken.slice(fall.top));
  if (given_m < TIP_MOVED_M) return 0;
  let gap = 0;
  for (let i = fall.top; i < fall.end; i++) {
    gap += Math.abs((taken[fall.top] - taken[i]) / given_m - (z[fall.top] - z[i]) / fallen_m);
  }
  return Math.max(0, 1 - (2 * gap) / (fall.end - fall.top));
}

function highestFall({ trace }: Traced): { top: number; end: number } | null {
  const { bait_z_m: z, contact } = trace;
  let best: { top: number; end: number } | null = null;
  let top: number | null = null;
  for (let i = 0; i < z.length; i++) {
    if (contact[i] === 0 && i < z.length - 1) {
      if (top === null || z[i] > z[top]) top = i;
      continue;
    }
    if (top !== null && z[top] - z[i] >= FALL_FROM_M) {
      if (!best || z[top] - z[i] > z[best.top] - z[best.end]) best = { top, end: i };
    }
    top = null;
  }
  return best;
}

/** Fastest the tip went, m/s, over three hundredths of a second. */
export function peakTipSpeed({ trace }: Traced): number {
  const { tip_x_m: x, tip_z_m: z } = trace;
  let most_m = 0;
  for (let i = TIP_SPEED_TICKS; i < x.length; i++) {
    const k = i - TIP_SPEED_TICKS;
    most_m = Math.max(most_m, Math.hypot(x[i] - x[k], z[i] - z[k]));
  }
  return most_m / (TIP_SPEED_TICKS * TICK_S);
}

/** Line taken up: from the tip to where the bait lay at first, m. */
function takenLine({ trace }: Traced): number[] {
  const { tip_x_m: x, tip_z_m: z, bait_x_m, bait_z_m } = trace;
  return x.map((at, i) => Math.hypot(at - bait_x_m[0], z[i] - bait_z_m[0]));
}
