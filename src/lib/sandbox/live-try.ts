import {
  LiveRun,
  TICK_S,
  type RecordedRun,
  type RodAngles,
  type RodInput,
  type Setup
} from '$lib/model';
import { formatTime, PRESSED_S, STILL_S, TOUCH_TIP_M, TryEnd } from '$lib/scoring';
import type { Hand } from './hand';
import { copyPose, newPose, type Pose } from './pose';
import { Reel } from './reel';
import { movedAngle, type Plane } from './rod-angles';

/** What the hand did and what came of it. The input alone gives the run again, bit for bit. */
export interface Try {
  readonly input: RodInput;
  readonly run: RecordedRun;
}

/**
 * What the learner is told where a try waits longer for them than it does elsewhere; else null.
 * @param isPressed whether one press moves the rod and the next stops it
 * @param isReeled whether its clock stands until the reel has done its part
 * @param isBegun whether its start is over, and its button gone
 * @param isOfFish whether it waits for a fish, which may never come
 */
export function waitText(
  longest_pause_s: number,
  isFall = false,
  isPressed = false,
  isReeled = false,
  isBegun = false,
  isOfFish = false
): string | null {
  const waits_s = isPressed ? Math.max(longest_pause_s, PRESSED_S) : longest_pause_s;
  if (waits_s <= STILL_S) return null;
  if (isFall) {
    const start = isBegun ? '' : '“Start” drops it. ';
    return `${start}Once it’s down, lower the rod and hold still: that ends the try.`;
  }
  const still = formatTime(waits_s);
  // On a narrow phone they have one line.
  if (isOfFish) return `No bite? Holding still for ${still} ends the try.`;
  if (isReeled) return `“Done” ends it. So does ${still} still after you reel.`;
  return `“Done” ends the try. So does holding still for ${still}.`;
}

/** What moved the rod: a button or a key, or what pulls at it. */
export type TouchedBy = 'press' | 'pull';

/** So long before a try ends by itself that is told, s: time to read it and to move on. */
const LAST_S = 4;
/** The try begins when the hand has moved the rod by this much, degrees: less is a touch. */
const BEGIN_DEG = 0.1;
/** A bait that went less was touched and not moved, m. */
const TOUCH_BAIT_M = 0.02;

export type TryStage = 'waiting' | 'moving' | 'still';

/** One try in practice water, from the rod at rest to the bait at rest. */
export class LiveTry {
  readonly now: Pose;
  readonly before: Pose;
  readonly reel = new Reel();
  stage: TryStage = 'waiting';
  private isMeant = false;
  private readonly live: LiveRun;
  private readonly angles: RodAngles;
  private readonly turns: keyof RodAngles;
  private readonly end: TryEnd;

  /**
   * Stillness shorter than `longest_pause_s` belongs to the try.
   * Throws ScenarioError when the line cannot be laid.
   * @param laid a run of the same whose line is laid already
   */
  constructor(
    readonly setup: Setup,
    plane: Plane,
    start: RodAngles,
    readonly hand: Hand,
    longest_pause_s = 0,
    laid?: LiveRun
  ) {
    this.live = laid ?? new LiveRun(setup, start);
    this.angles = { ...start };
    this.turns = movedAngle(plane);
    this.end = new TryEnd(setup, start[this.turns], longest_pause_s);
    const nodes = this.live.run.nodes.x.length;
    this.now = newPose(nodes);
    this.before = newPose(nodes);
    this.look();
    copyPose(this.now, this.before);
  }

  /** Everything recorded up to now. Read only. */
  get trace() {
    return this.live.run.record.trace;
  }

  /** What befell the bait up to now. Read only. */
  get events() {
    return this.live.run.record.events;
  }

  /** Whether neither hand nor reel has anything left to do. */
  get isAtRest(): boolean {
    return this.hand.isAtRest && !this.reel.isTurning;
  }

  /** Whether one press moves the rod and the next stops it. */
  set isPressed(is: boolean) {
    this.end.isPressed = is;
  }

  /** Whether a pointer has hold of the rod. */
  set isHeld(is: boolean) {
    this.end.isHeld = is;
  }

  /** Whether a task’s reel has still to do its part. */
  set isReelAwaited(is: boolean) {
    this.end.isReelAwaited = is;
  }

  /** Whole seconds until it ends by itself, in the last of them; else null. */
  get lastSeconds(): number | null {
    const { left_s } = this.end;
    return left_s === null || left_s > LAST_S ? null : Math.max(1, Math.ceil(left_s));
  }

  /** Whether the pointer at the rod alone keeps it from its end. */
  get isKeptByHand(): boolean {
    return this.end.isKeptByHand;
  }

  /** Starts the try without waiting for the hand. */
  begin(): void {
    this.isMeant = true;
    this.end.isBegun = true;
    if (this.stage === 'waiting') this.stage = 'moving';
  }

  /** Whether a finger that only felt for the rod began it: that is no try. */
  get isTouch(): boolean {
    const { bait_x_m, bait_z_m } = this.trace;
    const last = bait_x_m.length - 1;
    const bait_m = Math.hypot(bait_x_m[last] - bait_x_m[0], bait_z_m[last] - bait_z_m[0]);
    const isUnmoved =
      this.end.strayed_m < TOUCH_TIP_M && bait_m < TOUCH_BAIT_M && this.reel.taken_m === 0;
    return !this.isMeant && isUnmoved;
  }

  /** One tick of the model, at the hand's time `t_ms`. */
  tick(t_ms: number): void {
    const angle = this.hand.advance(t_ms, TICK_S);
    const taken_m = this.reel.advance(t_ms, TICK_S);
    if (this.stage === 'waiting') {
      if (taken_m === 0 && Math.abs(angle - this.angles[this.turns]) < BEGIN_DEG) return;
      this.stage = 'moving';
    }
    if (this.stage === 'still') return;
    this.angles[this.turns] = angle;
    this.live.push(this.angles, taken_m);
    copyPose(this.now, this.before);
    this.look();
    if (this.isOver()) this.stage = 'still';
  }

  /** Ends the try: holds the rod for `hold_s` more, without waiting for the clock. */
  finish(hold_s: number): Try {
    const { elevation_deg, azimuth_deg, ...rest } = this.live.input();
    const input = { ...rest, ...short({ elevation_deg, azimuth_deg }) };
    return { input, run: { setup: this.setup, move: input, ...this.live.finish(hold_s) } };
  }

  private look(): void {
    const { run } = this.live;
    const { now } = this;
    now.t_s = run.time_s;
    now.elevation_deg = this.angles.elevation_deg;
    now.azimuth_deg = this.angles.azimuth_deg;
    now.x.set(run.nodes.x);
    now.z.set(run.nodes.z);
    now.tipTension_N = run.tipTension_N;
    now.given_m = run.given_m;
  }

  private isOver(): boolean {
    const { t_s, x, z } = this.now;
    const [bait_x_m, bait_z_m] = [x[x.length - 1], z[z.length - 1]];
    const { taken_m } = this.reel;
    return this.end.next({
      t_s,
      angle_deg: this.angles[this.turns],
      taken_m,
      bait_x_m,
      bait_z_m
    });
  }
}

type Angles = Pick<RodInput, 'elevation_deg' | 'azimuth_deg'>;

/** An angle that stayed at zero is stored as one number, which the model takes for just the same. */
function short({ elevation_deg, azimuth_deg }: Angles): Angles {
  const isZero = (angles: number | number[]) =>
    Array.isArray(angles) && angles.every((angle) => angle === 0);
  return {
    elevation_deg: isZero(elevation_deg) && !isZero(azimuth_deg) ? 0 : elevation_deg,
    azimuth_deg: isZero(azimuth_deg) ? 0 : azimuth_deg
  };
}
