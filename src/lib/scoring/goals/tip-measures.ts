import { TICK_S, type Result } from '../../model';
import { clamped } from '../fading';
import type { RunToGrade } from '../run-to-grade';

type Traced = Pick<Result, 'trace'>;

/** A tip this far from where it was has been moved: less is tremble, or the rod giving, m. */
const TIP_MOVED_M = 0.03;
/** A tip that went so far up or down first was meant to go there, m. */
const WAY_MEANT_M = 0.1;
/** Who counts in whole seconds may be off by so much, and cannot know it, s. */
export const COUNTED_TO_S = 0.5;
/** More of its way given back by the middle of a fall, and the rod has not gone down with it. */
const DROPPED_PART = 0.75;
/** Line drawn and given back in one twitch, m: an inch and more. */
const TWITCH_M = 0.03;
/** Lower flights have no fall to speak of, m. */
export const FALL_FROM_M = 0.15;
/** A tip that gets no further than this in so many ticks rests: a pause after a twitch, m. */
const TIP_REST_M = 0.01;
const TIP_REST_TICKS = 20;
/** So long a tip stays as near when it only turns: that is no rest. */
const TURN_TICKS = 3;
/** The tip's speed is a mean over so many ticks: less than the quickest wrist needs for a hop. */
const TIP_SPEED_TICKS = 3;
/** A firm sweep takes up so much line, m, in so many ticks. */
const SWEEP_M = 0.5;
export const SWEEP_TICKS = 60;
/** A tip that draws less line in a tick has not begun to sweep, m: 0.2 m/s, a quick drag. */
const SWEEPING_M = 0.002;
/** What was felt in so many ticks before the sweep is still in the hand; and felt is what lasts so many. */
const FELT_TICKS = 300;
const LASTING_TICKS = 25;
/** So long after it began a tap has run out in slack line, s. */
const BITE_OVER_S = 0.35;
/** The pull at the end is a mean over this many ticks. */
const END_TICKS = 50;

/** Line drawn and given back. */
interface Draw {
  readonly drawn_m: number;
  readonly top_m: number;
  /** Of the line drawn and the line given back, the lesser, m. */
  size_m: number;
  /** The longest that the tip rested before it drew again, ticks. */
  rest_ticks: number;
}

/** How many times the tip drew line and gave it back, rested or not. */
export const countDraws = (result: Traced): number => drawsOf(result, TWITCH_M).length;

/** How many times it did, of those too small to be twitches as well. */
export const countSmallDraws = (result: Traced): number => drawsOf(result, TWITCH_M / 2).length;

/** More of a pull given back than this, and the next one begins on a slack line. */
const LOWERED_PART = 0.6;

/** How many pulls of the tip began where the one before had been taken back, for the most part. */
export function pullsFromSlack(result: Traced): number {
  const draws = drawsOf(result, TWITCH_M);
  const last = draws.at(-1);
  if (!last) return 0;
  const line_m = takenLine(result);
  // The last pull may have been held: that one is no draw.
  const isHeld = line_m[line_m.length - 1] - (last.top_m - last.size_m) >= TWITCH_M;
  const before = isHeld ? draws : draws.slice(0, -1);
  return before.filter(({ drawn_m, size_m }) => size_m >= LOWERED_PART * drawn_m).length;
}

/** How many times the tip drew line, gave it back, and rested for a fifth of a second. */
export function countTwitches(result: Traced): number {
  return drawsOf(result, TWITCH_M).filter(({ rest_ticks }) => rest_ticks >= TIP_REST_TICKS).length;
}

/**
 * How much each of the best `count` lacks of a twitch, 0 to 1: half as long, or without any rest, it is none.
 * Squared, since a rest is read in hundredths of a second: one of them is not to decide.
 */
export function twitchMisses(result: Traced, count: number): number[] {
  const whole = countTwitches(result);
  const nearly = drawsOf(result, TWITCH_M / 2)
    .map(
      ({ size_m, rest_ticks }) =>
        clamped(
          Math.max(
            (TWITCH_M - size_m) / (TWITCH_M / 2),
            (TIP_REST_TICKS - rest_ticks) / (TIP_REST_TICKS - TURN_TICKS)
          )
        ) ** 2
    )
    .sort((a, b) => a - b);
  return Array.from({ length: count }, (_, i) => (i < whole ? 0 : (nearly[i] ?? 1)));
}

/** @param turn_m where the tip goes back by less it only trembles */
function drawsOf(result: Traced, turn_m: number): Draw[] {
  const taken = takenLine(result);
  const draws: Draw[] = [];
  let [low, high, isUp] = [taken[0], taken[0], false];
  let [restedAt, restedFrom] = [taken[0], 0];
  for (const [i, now] of taken.entries()) {
    if (Math.abs(now - restedAt) >= TIP_REST_M) [restedAt, restedFrom] = [now, i];
    const last = draws.at(-1);
    if (isUp) {
      high = Math.max(high, now);
      if (now > high - turn_m) continue;
      draws.push({ drawn_m: high - low, top_m: high, size_m: 0, rest_ticks: 0 });
      [low, isUp] = [now, false];
    } else if (now >= Math.min(low, now) + turn_m) {
      [high, isUp] = [now, true];
    } else {
      low = Math.min(low, now);
      if (!last) continue;
      last.size_m = Math.min(last.drawn_m, last.top_m - low);
      last.rest_ticks = Math.max(last.rest_ticks, i - restedFrom);
    }
  }
  return draws;
}

/**
 * From the bait's touch of the bottom to the rod's first move, s; negative if the rod was first,
 * infinite if it never moved, minus infinite if the try was over before the bait came down. Of one that was
 * taken on the way down nothing is asked: NaN.
 */
export function waitAfterTouch({ trace, events }: Pick<Result, 'trace' | 'events'>): number {
  const at = (sought: string) => events.find(({ kind }) => kind === sought)?.t_s ?? Infinity;
  const touch_s = at('bottom');
  if (at('bite') < touch_s) return NaN;
  const moved_s = firstMove_s(trace);
  return moved_s === Infinity ? Infinity : moved_s - touch_s;
}

/** The same where a figure has to stand: of a bait that never came down, up to the end of the try. */
export function waitInFigures(result: Pick<Result, 'trace' | 'events'>): number {
  const wait_s = waitAfterTouch(result);
  return wait_s === -Infinity ? firstMove_s(result.trace) - (result.trace.t_s.at(-1) ?? 0) : wait_s;
}

/** When the rod first moved, s; infinite if it never did. */
function firstMove_s({ tip_x_m: x, tip_z_m: z, t_s }: Result['trace']): number {
  const moved = x.findIndex((at, i) => Math.hypot(at - x[0], z[i] - z[0]) >= TIP_MOVED_M);
  return moved === -1 ? Infinity : t_s[moved];
}

/**
 * Whether the rod's first move was up, and not down: its first whole way, or the farthest that it came. A
 * rod that was held may tremble up.
 */
export function isRaised(result: Pick<Result, 'trace' | 'events'>): boolean {
  const wait_s = waitAfterTouch(result);
  if (Number.isNaN(wait_s) || wait_s === Infinity) return false;
  const { tip_z_m: z } = result.trace;
  const ways = z.map((at) => at - z[0]);
  const far = (way: number) => Math.abs(way);
  const first = ways.find((way) => far(way) >= WAY_MEANT_M);
  return (first ?? ways.reduce((most, way) => (far(way) > far(most) ? way : most))) > 0;
}

/** Pull at the tip at the end, N. */
export function pullAtEnd({ trace }: Traced): number {
  const last = trace.tip_tension_N.slice(-END_TICKS);
  return last.reduce((sum, pull) => sum + pull, 0) / last.length;
}

/**
 * From the bite to the moment when the rod had swept firmly, s: negative for a sweep before it, minus
 * infinity for one where nothing bites, infinity for a bite without a sweep. NaN where nothing bit until
 * the hand was done, and it had not swept.
 */
export function strikeDelay({ result, bite_s: due_s, left_s }: StruckRun): number {
  const { trace, events } = result;
  const swept = firmSweep({ trace });
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s ?? null;
  if (swept === null) return bite_s === null || bite_s > left_s ? NaN : Infinity;
  const from_s = bite_s ?? due_s;
  return from_s === null ? -Infinity : trace.t_s[swept] - from_s;
}

type StruckRun = Pick<RunToGrade, 'bite_s' | 'left_s'> & {
  readonly result: Pick<Result, 'trace' | 'events'>;
};

/** Most of the line that the tip drew after the bite, m. */
export function drawnAfterBite({ trace, events }: Pick<Result, 'trace' | 'events'>): number {
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s ?? Infinity;
  const after = takenLine({ trace }).filter((_, i) => trace.t_s[i] >= bite_s);
  return after.length === 0 ? 0 : Math.max(...after) - after[0];
}

/** The tick at which the rod had swept firmly, or null. */
export function firmSweep({ trace }: Traced): number | null {
  const taken = takenLine({ trace });
  const swept = taken.findIndex(
    (now, i) => i > 0 && now - taken[Math.max(0, i - SWEEP_TICKS)] >= SWEEP_M
  );
  return swept === -1 ? null : swept;
}

/**
 * The hardest lasting pull at the tip in the seconds before a firm sweep, N; null where nothing was swept. A
 * bite's own pull, and what of it runs on along slack line, is not the jig's.
 */
export function pullBeforeSweep({
  trace,
  events
}: Pick<Result, 'trace' | 'events'>): number | null {
  const swept = firmSweep({ trace });
  if (swept === null) return null;
  const taken = takenLine({ trace });
  let begun = Math.max(0, swept - SWEEP_TICKS);
  while (begun < swept && taken[begun + 1] - taken[begun] < SWEEPING_M) begun++;
  const bite_s = events.find(({ kind }) => kind === 'bite')?.t_s ?? -Infinity;
  const bitten = trace.t_s.findIndex((t_s) => t_s >= bite_s + BITE_OVER_S);
  const from = Math.max(begun - FELT_TICKS, bitten === -1 ? begun : bitten);
  const pulls = trace.tip_tension_N.slice(from, begun);
  const lasting = pulls
    .slice(LASTING_TICKS - 1)
    .map((_, i) => Math.min(...pulls.slice(i, i + LASTING_TICKS)));
  return Math.max(0, ...lasting);
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

/** Whether the rod had given back most of its way before half of the highest fall was over. */
export function isDropped(result: Traced): boolean {
  const fall = highestFall(result);
  if (!fall) return false;
  const { bait_z_m: z } = result.trace;
  const taken = takenLine(result);
  const given_m = taken[fall.top] - Math.min(...taken.slice(fall.top));
  const half_m = (z[fall.top] + z[fall.end]) / 2;
  const at = z.findIndex((now, i) => i >= fall.top && now <= half_m);
  return given_m >= WAY_MEANT_M && taken[fall.top] - taken[at] > DROPPED_PART * given_m;
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
