import { REST_SPEED_M_S, TICK_S, type Result } from '../../model';
import { NO_MOVE_M } from '../run-measures';
import type { RunToGrade } from '../run-to-grade';

import { FALL_FROM_M, firmSweep, SWEEP_TICKS } from './tip-measures';

type Traced = Pick<Result, 'trace'>;

/** Shorter stillness is the turn of a move and no rest, s. */
const SHORTEST_REST_S = 1;
/** A bait that gets no further than this in so many ticks creeps at most: 2 cm/s, m. */
const CREEP_M = 0.005;
const CREEP_TICKS = 25;
/** A bait this far from where it rested has been moved, m: two inches. */
const BAIT_MOVED_M = 0.05;
/** Pace is a mean over so many ticks: shorter bursts are the line's, not the hand's. */
const PACE_TICKS = 24;
/** Part of its way at either end of its pace that is not looked at: starting and stopping. */
const PACE_TAIL = 0.05;

/** Travel towards the angler less what the bait went while the reel turned, m. */
export function travelByRod(run: RunToGrade): number {
  return run.result.travel_m - drawnByReel(run);
}

/** What the bait went towards the angler while the reel turned, up to `until_s`, m. */
export function drawnByReel({ result, lineIn_m }: RunToGrade, until_s = Infinity): number {
  const { bait_x_m: x, t_s } = result.trace;
  const towards = -Math.sign(x[0]);
  let reeled_m = 0;
  for (let i = 1; i < x.length && t_s[i] < until_s; i++) {
    if (isReeling(lineIn_m, t_s[i])) reeled_m += towards * (x[i] - x[i - 1]);
  }
  return reeled_m;
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

/** How fast the bait went while it went, m/s: its level way over the time it took; 0 for one that lay still. */
export function meanPace({ result }: RunToGrade): number {
  const { bait_x_m: x } = result.trace;
  let [way_m, ticks] = [0, 0];
  for (let i = 1; i < x.length; i++) {
    const step_m = Math.abs(x[i] - x[i - 1]);
    if (step_m <= REST_SPEED_M_S * TICK_S) continue;
    way_m += step_m;
    ticks++;
  }
  return ticks === 0 ? 0 : way_m / (ticks * TICK_S);
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

/** Share of the bait's level way made on the bottom, 0–1. */
export function draggedShare({ trace }: Traced): number {
  const { bait_x_m: x, contact } = trace;
  let [dragged_m, way_m] = [0, 0];
  for (let i = 1; i < x.length; i++) {
    const step_m = Math.abs(x[i] - x[i - 1]);
    way_m += step_m;
    if (contact[i] === 1) dragged_m += step_m;
  }
  return way_m > NO_MOVE_M ? dragged_m / way_m : 0;
}

/** Furthest that the bait got from where it lay, m. */
export function furthestFromStart({ trace }: Traced): number {
  const { bait_x_m: x, bait_z_m: z } = trace;
  return x.reduce((most, at, i) => Math.max(most, Math.hypot(at - x[0], z[i] - z[0])), 0);
}

/**
 * How long the bait rested between its moves, s, in order; shorter than `shortest_s` is none. What it
 * creeps while the line settles is no move.
 */
export function restsBetweenMoves({ trace }: Traced, shortest_s = SHORTEST_REST_S): number[] {
  const { bait_x_m: x, bait_z_m: z } = trace;
  const apart = (i: number, k: number) => Math.hypot(x[i] - x[k], z[i] - z[k]);
  const rests: { from: number; to: number }[] = [];
  let from = 0;
  for (let i = 1; i <= x.length; i++) {
    const isSlow = i < x.length && apart(i, Math.max(0, i - CREEP_TICKS)) < CREEP_M;
    if (isSlow) continue;
    if ((i - from) * TICK_S >= shortest_s) {
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
  'freed, but wedged tighter first': 0.5,
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
  return deeper >= 0 && deeper < at('freed') ? 'freed, but wedged tighter first' : 'freed';
}

/** What the reel did before anything bit: line that it took in, and how far it drew the bait, m. */
export interface ReeledFirst {
  readonly line_m: number;
  readonly drawn_m: number;
}

export function reeledFirst(run: RunToGrade): ReeledFirst {
  const until_s = Math.min(biteTime(run.result), run.result.trace.t_s.at(-1) ?? 0);
  return { line_m: run.lineIn_m(until_s), drawn_m: drawnByReel(run, until_s) };
}

function biteTime({ events }: Pick<Result, 'events'>): number {
  return events.find(({ kind }) => kind === 'bite')?.t_s ?? Infinity;
}

/** Less pull at the jig than this is slack, N; and it was given once it lasted so many ticks. */
const SLACK_N = 0.03;
const SLACK_TICKS = 40;

/** Whether the line went slack after the hook had hung. */
export function hasGivenSlack({ trace, events }: Pick<Result, 'trace' | 'events'>): boolean {
  const hung_s = events.find(({ kind }) => kind === 'snag')?.t_s ?? Infinity;
  const pulls = trace.bait_tension_N.filter((_, i) => trace.t_s[i] > hung_s);
  return pulls.filter((pull_N) => pull_N < SLACK_N).length >= SLACK_TICKS;
}

/** How far the rod drew the bait towards the angler before bite or strike, whichever was first, m. */
export function drawnFirst({ result, lineIn_m }: RunToGrade): number {
  const { trace, events } = result;
  const { bait_x_m: x, t_s } = trace;
  const bite_s = biteTime({ events });
  const swept = firmSweep({ trace });
  const struck_s = swept === null ? Infinity : t_s[Math.max(0, swept - SWEEP_TICKS)];
  let drawn_m = 0;
  for (let i = 1; i < x.length && t_s[i] < Math.min(bite_s, struck_s); i++) {
    if (!isReeling(lineIn_m, t_s[i])) drawn_m -= Math.sign(x[0]) * (x[i] - x[i - 1]);
  }
  return drawn_m;
}
