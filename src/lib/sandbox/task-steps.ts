import type { SequenceStep } from '$lib/model';
import {
  FIRST_KEY_SPEED,
  nearestKeySpeed,
  SNAP_KEY_SPEED,
  STILL_S,
  type Challenge
} from '$lib/scoring';

/** What a hand does next, each by a button: rod, reel, or the start of what begins without either. */
export type HandStep = 'start' | 'up' | 'down' | 'in' | 'out';

/** One step of a task, as the move that does it takes them. */
export interface TaskStep {
  readonly does: HandStep;
  /** Whether it comes after a rest: when, is the learner’s to know. */
  readonly isWaitedFor: boolean;
  /** Whether what it waits for is the bait on the bottom: where that is seen, it is time. */
  readonly isOnceDown?: boolean;
  /** Whether the rod is snapped, as for a hop or a hook set: at a drag’s pace it is none. */
  readonly isSnap: boolean;
  /** How quickly the rod turns in it, °/s; 0 for the reel. */
  readonly pace_deg_s: number;
  /** Line to be taken in or given before it is done, m; 0 for the rod. */
  readonly least_m: number;
  /** How far the rod turns in it before it is done, degrees; 0 for the reel. */
  readonly least_deg: number;
  /** Whether it is over once the rod turns back or rests, short as it was: a hop, a shake. */
  readonly isStroke: boolean;
}

/** Of water without a task; the same each time, as what differs lays the water out anew. */
export const NO_STEPS: readonly TaskStep[] = [];

/** Whether the rod goes up and at once down again: a finger that lets go between comes too late for the fall. */
export function turnsBack(steps: readonly TaskStep[]): boolean {
  const [first, second] = steps.filter(({ does }) => does !== 'start');
  return first?.does === 'up' && second?.does === 'down' && !second.isWaitedFor;
}

/**
 * A turn of the rod is about done at this part of the way that the task's own move goes: what moves the jig
 * nearly whole, the way back less so. Design values.
 */
const ABOUT = { up: 0.95, down: 0.8 } as const;
/** A hand lets go so long after a light, s: a simple reaction. From memory. */
const REACTION_S = 0.2;

const START: TaskStep = {
  ...{ does: 'start', isWaitedFor: false, isSnap: false, pace_deg_s: 0 },
  ...{ least_m: 0, least_deg: 0, isStroke: false }
};

/** The steps of a task in order; none where its move has no such steps. */
export function taskStepsOf({
  reference,
  goals
}: Pick<Challenge, 'reference' | 'goals'>): TaskStep[] {
  const isOfPace = goals.some(({ kind }) => kind === 'hops' || kind === 'strike');
  const isOfStrokes = goals.some(({ kind }) => kind === 'twitches' || kind === 'freed');
  const asked = goals.find((goal) => goal.kind === 'reeled');
  let isFalling = goals.some(({ kind }) => kind === 'bottom_first');
  const parts = partsOf(reference);
  const steps: TaskStep[] = [];
  let waited_s = 0;
  if (parts.length > 0 && !doneBy(parts[0])) steps.push(START);
  for (const part of parts) {
    const does = doneBy(part);
    if (does) {
      const least_m = part.kind === 'reel' ? (asked?.least_m ?? Math.abs(part.line_m)) : 0;
      const isSnap = isOfPace && does === 'up' && isQuick(part);
      const isWaitedFor = waited_s >= STILL_S;
      steps.push({
        ...{ does, isWaitedFor, isSnap, least_m },
        isStroke: isSnap || isOfStrokes,
        least_deg: turnOf(part) * (does === 'up' ? ABOUT.up : ABOUT.down),
        ...(isWaitedFor && isFalling ? { isOnceDown: true } : {}),
        pace_deg_s: paceOf(part)
      });
      isFalling = false;
    }
    waited_s = does ? 0 : waited_s + durationOf(part);
  }
  return steps;
}

function partsOf(move: Challenge['reference']): readonly SequenceStep[] {
  if (move.kind === 'sequence') return move.moves;
  return move.kind === 'lift' || move.kind === 'sweep' ? [move] : [];
}

function doneBy(part: SequenceStep): HandStep | null {
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

const upwards = (steps: readonly TaskStep[]) => steps.filter(({ does }) => does === 'up');

/** Whether the rod snaps in a task and never drags: that is its button’s pace. */
export const isSnapAlone = (steps: readonly TaskStep[]): boolean =>
  steps.some(({ isSnap }) => isSnap) && upwards(steps).every(({ isSnap }) => isSnap);

/** Whether the rod drags and snaps in one task: that takes a button for each. */
export const isDragAndSnap = (steps: readonly TaskStep[]): boolean =>
  steps.some(({ isSnap }) => isSnap) && !isSnapAlone(steps);

/** Which of the speeds a task’s buttons begin with: its first pull’s, so that a button held does as is asked. */
export function firstKeySpeed(steps: readonly TaskStep[], rodLength_m: number): number {
  if (isSnapAlone(steps)) return SNAP_KEY_SPEED;
  const [pull] = upwards(steps);
  if (!pull) return FIRST_KEY_SPEED;
  const asked_m_s = ((pull.pace_deg_s * Math.PI) / 180) * rodLength_m;
  return nearestKeySpeed(asked_m_s);
}

const durationOf = (part: SequenceStep): number =>
  part.kind === 'tip_path' ? (part.t_s.at(-1) ?? 0) : part.duration_s;

/** A rod that turned less has begun no stroke, degrees: a hand that rests strays as far. */
const LEAST_DEG = 1;
/** What goes on after so long a rest is another stroke, ms: the shortest rest that a task asks for. */
const REST_MS = 300;

/** Tells the strokes of a rod that goes back and forth. */
class Strokes {
  /** Which way the last one went; 0 once the rod rests. */
  direction = 0;
  /** Where it began, degrees. */
  begun_deg: number;
  /** When it last went on. */
  moved_ms = 0;

  constructor(private from_deg: number) {
    this.begun_deg = from_deg;
  }

  /** Whether a stroke begins with this look. */
  look(now_ms: number, deg: number): boolean {
    const way = deg - this.from_deg;
    if (this.direction !== 0 && way * this.direction > 0) {
      this.from_deg = deg;
      this.moved_ms = now_ms;
      return false;
    }
    if (this.direction !== 0 && now_ms - this.moved_ms >= REST_MS) this.direction = 0;
    if (Math.abs(way) < LEAST_DEG) return false;
    this.begun_deg = this.from_deg;
    this.from_deg = deg;
    this.moved_ms = now_ms;
    this.direction = Math.sign(way);
    return true;
  }
}

/** How far a hand has come with a task’s steps. */
export class StepsMade {
  private made = 0;
  private taken_m = 0;
  /** The reel at the last look. */
  private reel = { seen_ms: 0, taken_m: 0 };
  /** Whether a hand that lets go at the light of the next step has reeled as much as is asked. */
  private isAlmostTaken = false;
  /** Where the rod was when it began the step that comes now, degrees; null until it has. */
  private begun_deg: number | null = null;
  private readonly rod: Strokes;

  constructor(
    private readonly steps: readonly TaskStep[],
    angle_deg: number
  ) {
    this.rod = new Strokes(angle_deg);
  }

  /** The step that comes now; undefined once all are made. */
  get upcoming(): TaskStep | undefined {
    return this.steps[this.made];
  }

  /**
   * What is to be done now; null where that is to wait, or for the learner to know: how far the rod goes
   * last is told by no light where the bait is out of sight.
   */
  next(isDownInSight: boolean, isHidden: boolean): HandStep | 'done' | null {
    const at = this.made + (this.isAlmostTaken ? 1 : 0);
    const upcoming = this.steps[at];
    if (!upcoming) return 'done';
    const isLast = at === this.steps.length - 1;
    if (isHidden && isLast && this.begun_deg !== null) return 'done';
    const isTime = !upcoming.isWaitedFor || (upcoming.isOnceDown && isDownInSight);
    return isTime || this.begun_deg !== null ? upcoming.does : null;
  }

  /** Whether the reel still comes, now or later. */
  get isReelToCome(): boolean {
    return this.steps.slice(this.made).some(isOfReel);
  }

  /** Where rod and reel are now that the try has begun, often enough to miss no stroke. */
  look(now_ms: number, angle_deg: number, taken_m: number): void {
    if (this.upcoming?.does === 'start') this.made += 1;
    const isNewStroke = this.rod.look(now_ms, angle_deg);
    if (this.begun_deg !== null && this.isGivenUp(isNewStroke, now_ms)) this.stepOn();
    this.lookAtRod(isNewStroke, angle_deg);
    this.lookAtReel(now_ms, taken_m);
  }

  /** Whether a turn that was begun is over, short as it is: with its stroke, or as the hand waits for the next. */
  private isGivenUp(isNewStroke: boolean, now_ms: number): boolean {
    const [step, next] = this.steps.slice(this.made);
    if (step.isStroke) return isNewStroke || this.rod.direction === 0;
    return next?.isWaitedFor === true && now_ms - this.rod.moved_ms >= STILL_S * 1000;
  }

  private lookAtRod(isNewStroke: boolean, angle_deg: number): void {
    const { rod } = this;
    const way = turnWayOf(this.upcoming);
    if (way === 0) return;
    if (isNewStroke && way === rod.direction) this.begun_deg ??= rod.begun_deg;
    const { begun_deg, upcoming } = this;
    if (begun_deg === null || !upcoming) return;
    if (way * (angle_deg - begun_deg) >= upcoming.least_deg) this.stepOn();
  }

  /** Who reels has done with the rod, far as it went. */
  private lookAtReel(now_ms: number, taken_m: number): void {
    const { upcoming, reel } = this;
    const pace_m_s = (1000 * (taken_m - reel.taken_m)) / Math.max(1, now_ms - reel.seen_ms);
    this.reel = { seen_ms: now_ms, taken_m };
    this.isAlmostTaken = false;
    const isUnbegun = upcoming && !isOfReel(upcoming) && this.begun_deg === null;
    const at = this.steps.findIndex((step, i) => i >= this.made && isOfReel(step));
    if (at < 0 || isUnbegun) {
      this.taken_m = taken_m;
      return;
    }
    const { least_m } = this.steps[at];
    const takenIn = (more_s: number) =>
      reelWayOf(this.steps[at]) * (taken_m + more_s * pace_m_s - this.taken_m);
    if (takenIn(0) < least_m) {
      this.isAlmostTaken = at === this.made && takenIn(REACTION_S) >= least_m;
      return;
    }
    this.taken_m = taken_m;
    this.made = at;
    this.stepOn();
  }

  private stepOn(): void {
    this.made += 1;
    this.begun_deg = null;
  }
}

export const isOfReel = ({ does }: TaskStep): boolean => does === 'in' || does === 'out';

const reelWayOf = ({ does }: TaskStep): number => (does === 'out' ? -1 : 1);

/** Which way the rod turns in a step; 0 where it does not. */
const turnWayOf = (step: TaskStep | undefined): number =>
  step?.does === 'up' ? 1 : step?.does === 'down' ? -1 : 0;
