import { STILL_S } from '$lib/scoring';
import {
  isDragAndSnap,
  isOfReel,
  isReelAsked,
  timesOfPull,
  type HandStep,
  type TaskStep
} from './task-steps';

/**
 * A turn of the rod is about done at this part of the way that the task's own move goes: what moves the jig
 * nearly whole, the way back less so. Design values.
 */
const ABOUT = { up: 0.97, down: 0.88 } as const;
/**
 * A light moves on so long before the end of a pull, or of a reel’s part, ms: a quarter of a second until a finger
 * lets go, from memory, and a tenth in which wrist or crank, and the screen, come after it.
 */
const LEAD_MS = 350;
/** A crank that takes in less has stopped, m/s. */
const CRANK_STOPPED_M_S = 0.05;
/** A rod that turned less has begun no stroke, degrees: a hand that rests strays as far. */
const LEAST_DEG = 1;
/** A hand that strays less rests, degrees; and a reel, m: a wrist and a crank come to rest by and by. */
const STILL_DEG = 0.15;
const STILL_M = 0.003;
/** What goes on after so long a rest is another stroke, ms: the shortest rest that a task asks for. */
const REST_MS = 300;

/** A reel’s pace is told over so long, ms. */
const PACE_OVER_MS = 80;

/** Where rod and reel are at one look. */
interface Look {
  readonly ms: number;
  readonly deg: number;
  readonly taken_m: number;
}

/** How fast line is taken in. The model goes on in ticks and frames come unevenly: from one to the next no pace is told. */
class Crank {
  m_s = 0;
  private from: Look | null = null;

  look(now: Look): void {
    this.from ??= now;
    const since_ms = now.ms - this.from.ms;
    if (since_ms < PACE_OVER_MS) return;
    this.m_s = (1000 * (now.taken_m - this.from.taken_m)) / since_ms;
    this.from = now;
  }
}

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

/** How a button turns the rod: as long as it is held, or to where a stroke ends; and how many times its own pace. */
interface Press {
  readonly stop_deg: number | null;
  readonly times: number;
}

const AS_HELD: Press = { stop_deg: null, times: 1 };

/** How far a hand has come with a task’s steps. */
export class StepsMade {
  private made = 0;
  private taken_m = 0;
  private now: Look = { ms: 0, deg: 0, taken_m: 0 };
  /** Where hand and reel came to rest, and when. */
  private still: Look;
  /** Whether a hand that lets go at the light of the next step has reeled as much as is asked. */
  private isAlmostTaken = false;
  /** Whether the rest before the step that comes now is over: the hand that then begins it rests no more. */
  private isRested = false;
  /** Whether the reel, with enough taken in, still goes on to what is best. */
  private isReeledOn = false;
  /** What the reel has at its best taken in, m. */
  private aim_m = 0;
  /** Where the rod was when it began the step that comes now, degrees; null until it has. */
  private begun_deg: number | null = null;
  /** Whether a button was held to turn the rod, and no longer is: while the wrist comes to rest. */
  private isLetGo = false;
  private isHeld = false;
  private readonly rod: Strokes;
  private readonly crank = new Crank();
  private readonly hasSnap: boolean;

  constructor(
    private readonly steps: readonly TaskStep[],
    angle_deg: number
  ) {
    this.rod = new Strokes(angle_deg);
    this.still = { ms: 0, deg: angle_deg, taken_m: 0 };
    this.hasSnap = isDragAndSnap(steps);
  }

  /** The step that comes now; undefined once all are made. */
  get upcoming(): TaskStep | undefined {
    return this.steps[this.made];
  }

  /**
   * What is to be done now; null where that is to wait, or for the learner to know: how far the rod drags
   * last is told by no light where the bait is out of sight; how far it is lowered may be.
   */
  next(isDownInSight: boolean, isHidden: boolean): HandStep | 'done' | null {
    if (this.isReeledOn) return this.steps[this.made - 1].does;
    const at = this.made + (this.isAlmostTaken ? 1 : 0);
    const upcoming = this.steps[at];
    const drag = isHidden && at >= this.steps.length - 1 ? this.lastDrag : undefined;
    if (drag && (this.begun_deg !== null || !upcoming)) {
      const isLowered = drag.does === 'down' && !upcoming;
      const isOver = isLowered || this.isLetGo || this.stood_ms >= REST_MS;
      return isOver ? 'done' : this.buttonOf(drag);
    }
    if (!upcoming) return 'done';
    const isTime = this.isRested || upcoming.rest_s === 0 || (upcoming.isOnceDown && isDownInSight);
    return isTime || this.isBegun ? this.buttonOf(upcoming) : null;
  }

  /** The last step, if it is a drag. */
  private get lastDrag(): TaskStep | undefined {
    const last = this.steps.at(-1);
    return last && !last.isStroke && !isOfReel(last) ? last : undefined;
  }

  /** How long hand and reel have been still. */
  private get stood_ms(): number {
    return this.now.ms - this.still.ms;
  }

  /** How long the rest has gone that a task names before the step that comes now, whole s; null where it names none. */
  get rested_s(): number | null {
    const { upcoming } = this;
    if (!upcoming?.isWaitedFor || upcoming.rest_s === Infinity || this.isBegun) return null;
    return Math.floor(this.stood_ms / 1000);
  }

  /** Whether rod or reel has begun the step that comes now. */
  private get isBegun(): boolean {
    if (!this.upcoming || !isOfReel(this.upcoming)) return this.begun_deg !== null;
    return Math.abs(this.now.taken_m - this.taken_m) > STILL_M;
  }

  /** A snap after a drag has a button of its own. */
  buttonOf({ does, isSnap }: TaskStep): HandStep {
    return isSnap && this.hasSnap ? 'snap' : does;
  }

  /** Whether the reel still comes, now or later. */
  get isReelToCome(): boolean {
    return isReelAsked(this.steps, this.made);
  }

  /** How a button turns the rod that is pressed at this angle. */
  pressOf(direction: number, angle_deg: number): Press {
    const { upcoming } = this;
    if (!upcoming || turnWayOf(upcoming) !== direction) return AS_HELD;
    const from_deg = this.begun_deg ?? angle_deg;
    return {
      stop_deg: upcoming.isPressStopped ? from_deg + direction * upcoming.way_deg : null,
      times: timesOfPull(upcoming, this.steps)
    };
  }

  /**
   * Where rod and reel are now that the try has begun, often enough to miss no stroke.
   * @param isHeld whether a button is held that turns the rod
   */
  look(now_ms: number, angle_deg: number, taken_m: number, isHeld = false): void {
    this.isLetGo = !isHeld && (this.isHeld || this.isLetGo);
    this.isHeld = isHeld;
    const before = this.now;
    this.now = { ms: now_ms, deg: angle_deg, taken_m };
    if (this.upcoming?.does === 'start') {
      this.made += 1;
      this.still = this.now;
    }
    if (!isStillAt(this.now, this.still)) this.still = this.now;
    const { upcoming } = this;
    if (upcoming && this.stood_ms >= 1000 * upcoming.rest_s) this.isRested = true;
    const isNewStroke = this.rod.look(now_ms, angle_deg);
    if (this.begun_deg !== null && this.isGivenUp(isNewStroke)) this.stepOn();
    this.lookAtRod(isNewStroke, before);
    this.crank.look(this.now);
    this.lookAtReel();
  }

  /** Whether a turn that was begun is over, short as it is: with its stroke, or as the hand waits for the next. */
  private isGivenUp(isNewStroke: boolean): boolean {
    const [step, next] = this.steps.slice(this.made);
    if (step.isStroke) return isNewStroke || this.rod.direction === 0;
    return next?.isWaitedFor === true && this.stood_ms >= STILL_S * 1000;
  }

  private lookAtRod(isNewStroke: boolean, before: Look): void {
    const { rod, now } = this;
    const way = turnWayOf(this.upcoming);
    if (way === 0) return;
    if (isNewStroke && way === rod.direction) this.begun_deg ??= rod.begun_deg;
    const { begun_deg, upcoming } = this;
    if (begun_deg === null || !upcoming) return;
    const gone_deg = way * (now.deg - begun_deg);
    const lead_deg = way * (now.deg - before.deg) * leadIn(upcoming, before, now);
    const { way_deg } = upcoming;
    const isAbout = gone_deg >= way_deg * ABOUT[way > 0 ? 'up' : 'down'];
    if (isAbout || gone_deg + Math.min(lead_deg, way_deg / 2) >= way_deg) this.stepOn();
  }

  /** Who reels has done with the rod, far as it went. */
  private lookAtReel(): void {
    const { upcoming, now } = this;
    const pace_m_s = this.crank.m_s;
    const soon_m = now.taken_m + (LEAD_MS / 1000) * pace_m_s;
    this.isAlmostTaken = false;
    if (this.isReeledOn) this.isReeledOn = pace_m_s > CRANK_STOPPED_M_S && soon_m < this.aim_m;
    const isUnbegun = upcoming && !isOfReel(upcoming) && this.begun_deg === null;
    const at = this.steps.findIndex((step, i) => i >= this.made && isOfReel(step));
    if (at < 0 || isUnbegun) {
      this.taken_m = now.taken_m;
      return;
    }
    const { does, least_m, aim_m } = this.steps[at];
    const way = does === 'out' ? -1 : 1;
    if (way * (now.taken_m - this.taken_m) < least_m) {
      this.isAlmostTaken = at === this.made && way * (soon_m - this.taken_m) >= aim_m;
      return;
    }
    this.aim_m = this.taken_m + way * aim_m;
    this.isReeledOn = way * (this.aim_m - soon_m) > 0 && way > 0;
    this.taken_m = now.taken_m;
    this.made = at;
    this.stepOn();
  }

  private stepOn(): void {
    this.made += 1;
    this.begun_deg = null;
    this.isRested = this.isLetGo = false;
  }
}

/** By how many times the way of the last look the light of a pull comes early. */
function leadIn({ isQuick, isPressStopped, does }: TaskStep, before: Look, now: Look): number {
  if (isQuick || isPressStopped || does !== 'up' || before.ms === 0) return 0;
  return LEAD_MS / Math.max(1, now.ms - before.ms);
}

const isStillAt = (now: Look, still: Look): boolean =>
  Math.abs(now.deg - still.deg) <= STILL_DEG && Math.abs(now.taken_m - still.taken_m) <= STILL_M;

/** Which way the rod turns in a step; 0 where it does not. */
const turnWayOf = (step: TaskStep | undefined): number =>
  step?.does === 'up' ? 1 : step?.does === 'down' ? -1 : 0;
