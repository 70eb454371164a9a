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
}

/** Of water without a task; the same each time, as what differs lays the water out anew. */
export const NO_STEPS: readonly TaskStep[] = [];

/** Whether the rod goes up and at once down again: a finger that lets go between comes too late for the fall. */
export function turnsBack(steps: readonly TaskStep[]): boolean {
  const [first, second] = steps.filter(({ does }) => does !== 'start');
  return first?.does === 'up' && second?.does === 'down' && !second.isWaitedFor;
}

/** The steps of a task in order; none where its move has no such steps. */
export function taskStepsOf({
  reference,
  goals
}: Pick<Challenge, 'reference' | 'goals'>): TaskStep[] {
  const isOfPace = goals.some(({ kind }) => kind === 'hops' || kind === 'strike');
  const asked = goals.find((goal) => goal.kind === 'reeled');
  let isFalling = goals.some(({ kind }) => kind === 'bottom_first');
  const parts = partsOf(reference);
  const steps: TaskStep[] = [];
  let waited_s = 0;
  if (parts.length > 0 && !doneBy(parts[0]))
    steps.push({ does: 'start', isWaitedFor: false, isSnap: false, pace_deg_s: 0, least_m: 0 });
  for (const part of parts) {
    const does = doneBy(part);
    if (does) {
      const least_m = part.kind === 'reel' ? (asked?.least_m ?? Math.abs(part.line_m)) : 0;
      const isSnap = isOfPace && does === 'up' && isQuick(part);
      const isWaitedFor = waited_s >= STILL_S;
      steps.push({
        ...{ does, isWaitedFor, isSnap, least_m },
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

const paceOf = (part: SequenceStep): number =>
  part.kind === 'lift' || part.kind === 'sweep'
    ? Math.abs(part.to_deg - part.from_deg) / part.duration_s
    : 0;

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
  private direction = 0;
  private moved_ms = 0;

  constructor(private from_deg: number) {}

  /** Which way a stroke begins with this look; 0 for none. */
  look(now_ms: number, deg: number): number {
    const way = deg - this.from_deg;
    if (this.direction !== 0 && way * this.direction > 0) {
      this.from_deg = deg;
      this.moved_ms = now_ms;
      return 0;
    }
    if (this.direction !== 0 && now_ms - this.moved_ms >= REST_MS) this.direction = 0;
    if (Math.abs(way) < LEAST_DEG) return 0;
    this.from_deg = deg;
    this.moved_ms = now_ms;
    return (this.direction = Math.sign(way));
  }
}

/** How far a hand has come with a task’s steps. */
export class StepsMade {
  private made = 0;
  private taken_m = 0;
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

  /** What is to be done now; null where that is to wait, or for the learner to know. */
  next(isDownInSight: boolean): HandStep | 'done' | null {
    const { upcoming } = this;
    if (!upcoming) return 'done';
    const isTime = !upcoming.isWaitedFor || (upcoming.isOnceDown && isDownInSight);
    return isTime ? upcoming.does : null;
  }

  /** Whether the reel still comes, now or later. */
  get isReelToCome(): boolean {
    return this.steps.slice(this.made).some(isOfReel);
  }

  /** Where rod and reel are now that the try has begun, often enough to miss no stroke. */
  look(now_ms: number, angle_deg: number, taken_m: number): void {
    this.take('start');
    const turned = this.rod.look(now_ms, angle_deg);
    if (turned !== 0) this.take(turned > 0 ? 'up' : 'down');
    const { upcoming } = this;
    if (!upcoming || upcoming.least_m === 0) this.taken_m = taken_m;
    else if (wayOf(upcoming) * (taken_m - this.taken_m) >= upcoming.least_m) {
      this.taken_m = taken_m;
      this.made += 1;
    }
  }

  private take(does: HandStep): void {
    if (this.upcoming?.does === does) this.made += 1;
  }
}

export const isOfReel = ({ does }: TaskStep): boolean => does === 'in' || does === 'out';

const wayOf = ({ does }: TaskStep): number => (does === 'out' ? -1 : 1);
