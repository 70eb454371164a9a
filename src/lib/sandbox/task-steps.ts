import type { SequenceStep } from '$lib/model';
import { REEL_M_S, slackPace, STILL_S, type Challenge } from '$lib/scoring';

/** What a hand does next, each by a button: rod, its snap after a drag, reel, or the start of what begins without either. */
export type HandStep = 'start' | 'up' | 'down' | 'snap' | 'in' | 'out';

/** One step of a task, as the move that does it takes them. */
export interface TaskStep {
  readonly does: Exclude<HandStep, 'snap'>;
  /** Whether it comes after a rest that would end most tries. */
  readonly isWaitedFor: boolean;
  /** The rest before it, s: then it lights; Infinity where what ends the rest is the learner’s to know. */
  readonly rest_s: number;
  /** Whether what it waits for is the bait on the bottom: where that is seen, it is time. */
  readonly isOnceDown?: boolean;
  /** Whether the rod is snapped, as for a hop or a hook set: at a drag’s pace it is none. */
  readonly isSnap: boolean;
  /** Whether it is over before a finger lets go at a light that comes early. */
  readonly isQuick: boolean;
  /** How quickly the rod turns in it, °/s; 0 for the reel. */
  readonly pace_deg_s: number;
  /** How fast the reel’s button goes in it, m/s; 0 for the rod. */
  readonly pace_m_s: number;
  /** Line to be taken in or given before it is done, m; 0 for the rod. */
  readonly least_m: number;
  /** As much as the task’s own move takes in or gives, m. */
  readonly aim_m: number;
  /** How far the rod turns in it, degrees; 0 for the reel. */
  readonly way_deg: number;
  /** Whether it is over once the rod turns back or rests, short as it was: a hop, a shake. */
  readonly isStroke: boolean;
  /** Whether a press turns the rod so far and no farther: no finger lets go of a button in so short a time. */
  readonly isPressStopped: boolean;
}

/** Of water without a task; the same each time, as what differs lays the water out anew. */
export const NO_STEPS: readonly TaskStep[] = [];

/** Whether the rod goes up and at once down again: a finger that lets go between comes too late for the fall. */
export function turnsBack(steps: readonly TaskStep[]): boolean {
  const [first, second] = steps.filter(({ does }) => does !== 'start');
  return first?.does === 'up' && second?.does === 'down' && !second.isWaitedFor;
}

const START: TaskStep = {
  ...{ does: 'start', isWaitedFor: false, rest_s: 0, isSnap: false, isQuick: false, pace_deg_s: 0 },
  ...{ pace_m_s: 0, least_m: 0, aim_m: 0, way_deg: 0, isStroke: false, isPressStopped: false }
};

/** The steps of a task in order; none where its move has no such steps. That nothing bites in a try they do not tell. */
export function taskStepsOf(
  task: Pick<Challenge, 'reference' | 'if_bitten' | 'goals'>
): TaskStep[] {
  const { reference, if_bitten, goals } = task;
  const isOfHops = goals.some(({ kind }) => kind === 'hops');
  const isOfBite = goals.some(({ kind }) => kind === 'strike');
  const isOfStrokes = goals.some(({ kind }) => kind === 'twitches' || kind === 'freed');
  const asked = goals.find((goal) => goal.kind === 'reeled');
  let isFalling = goals.some(({ kind }) => kind === 'bottom_first');
  const parts = partsOf(if_bitten ?? reference);
  const bitten = isOfBite ? parts.findLast(({ kind }) => kind === 'pause') : undefined;
  const steps: TaskStep[] = [];
  let waited_s = 0;
  if (parts.length > 0 && !doneBy(parts[0])) steps.push(START);
  for (const part of parts) {
    const does = doneBy(part);
    if (does) {
      const aim_m = part.kind === 'reel' ? Math.abs(part.line_m) : 0;
      const least_m = part.kind === 'reel' ? (asked?.least_m ?? aim_m) : 0;
      const isSnap = (isOfHops || isOfBite) && does === 'up' && isQuick(part);
      const isWaitedFor = waited_s >= STILL_S;
      const isOnceDown = isWaitedFor && isFalling && waited_s < Infinity;
      steps.push({
        ...{ does, isWaitedFor, isSnap, least_m, aim_m },
        rest_s: isOnceDown ? Infinity : isWaitedFor || isOfStrokes ? waited_s : 0,
        isStroke: isSnap || isOfStrokes,
        isPressStopped: (isSnap && isOfHops) || isOfStrokes,
        isQuick: isQuick(part),
        way_deg: turnOf(part),
        ...(isOnceDown ? { isOnceDown } : {}),
        pace_deg_s: paceOf(part),
        pace_m_s: part.kind === 'reel' ? slackPace(task) : 0
      });
      isFalling = false;
    }
    waited_s = does ? 0 : part === bitten ? Infinity : waited_s + durationOf(part);
  }
  return steps;
}

function partsOf(move: Challenge['reference']): readonly SequenceStep[] {
  if (move.kind === 'sequence') return move.moves;
  return move.kind === 'lift' || move.kind === 'sweep' ? [move] : [];
}

function doneBy(part: SequenceStep): TaskStep['does'] | null {
  if (part.kind === 'reel') return part.line_m > 0 ? 'in' : 'out';
  if (part.kind !== 'lift' && part.kind !== 'sweep') return null;
  if (part.from_deg === part.to_deg) return null;
  return part.to_deg > part.from_deg ? 'up' : 'down';
}

/** A rod that turns slower drags, °/s: the lessons' slowest hop turns it at 40, their quickest drag at 12. */
const SNAP_FROM_DEG_S = 30;

const isQuick = (part: SequenceStep): boolean => paceOf(part) >= SNAP_FROM_DEG_S;

const turnOf = (part: SequenceStep): number =>
  part.kind === 'lift' || part.kind === 'sweep' ? Math.abs(part.to_deg - part.from_deg) : 0;

const paceOf = (part: SequenceStep): number => turnOf(part) / durationOf(part);

export const upwards = (steps: readonly TaskStep[]) => steps.filter(({ does }) => does === 'up');

/** Whether the rod snaps in a task and never drags: that is its button’s pace. */
export const isSnapAlone = (steps: readonly TaskStep[]): boolean =>
  steps.some(({ isSnap }) => isSnap) && upwards(steps).every(({ isSnap }) => isSnap);

/** Whether the rod drags and snaps in one task: that takes a button for each. */
export const isDragAndSnap = (steps: readonly TaskStep[]): boolean =>
  steps.some(({ isSnap }) => isSnap) && !isSnapAlone(steps);

/** A later pull that the task has at half of the first one’s pace or less goes as much slower. A design value. */
const GENTLE = 0.5;

/**
 * How many times the pace of the task’s first pull a step goes: 1, unless it is a pull that is much gentler, or
 * a way back that is quicker.
 */
export function timesOfPull({ does, pace_deg_s }: TaskStep, steps: readonly TaskStep[]): number {
  const [first] = upwards(steps);
  if (!first) return 1;
  const times = pace_deg_s / first.pace_deg_s;
  if (does === 'down') return Math.max(1, times);
  return does === 'up' && times <= GENTLE ? times : 1;
}

const durationOf = (part: SequenceStep): number =>
  part.kind === 'tip_path' ? (part.t_s.at(-1) ?? 0) : part.duration_s;

/** How fast the reel’s button goes in a task, m/s. */
export const reelPace = (steps: readonly TaskStep[]): number =>
  steps.find(isOfReel)?.pace_m_s ?? REEL_M_S;

/** Whether the reel comes from this step on, and not for a fish alone, which may never bite. */
export function isReelAsked(steps: readonly TaskStep[], from = 0): boolean {
  const fish = steps.findIndex(isForFish);
  return steps.slice(from, fish < 0 ? undefined : fish).some(isOfReel);
}

/** Whether it waits for what the learner alone can tell: a fish, or that none comes. */
export const isForFish = ({ rest_s, isOnceDown }: TaskStep): boolean =>
  rest_s === Infinity && !isOnceDown;

export const isOfReel = ({ does }: TaskStep): boolean => does === 'in' || does === 'out';
