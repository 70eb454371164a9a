import type { Setup } from '../model';

/** Hand and bait have to be still for this long before a try ends by itself, s, unless the task rests longer. */
export const STILL_S = 1.2;
/**
 * As long, at least, where each press is a press of one switch, s: a scan of two seconds a step comes round
 * the buttons of a rod and a reel in that time.
 */
export const PRESSED_S = 15;
/** As long, at least, while a finger or the mouse still has hold of the rod, s: who thinks holds still. */
const HELD_S = 3.2;
/** A try waits so long for a hand that has still to begin, or to come to the reel, s: to read, and to take hold. */
const AWAITED_S = 30;
/** A hand is still while it strays less than this, degrees: half a centimetre at the tip. */
const STILL_HAND_DEG = 0.15;
/** The bait is still while it strays less than this, m. */
const STILL_BAIT_M = 0.003;
/** A tip that strayed less was touched and not moved, m. */
export const TOUCH_TIP_M = 0.06;
/** No try is longer, s: beyond that the hand has been forgotten. */
const LONGEST_S = 120;

/** Where hand and bait are at one tick. */
export interface TickOfTry {
  t_s: number;
  /** Of the angle that the task turns. */
  angle_deg: number;
  /** By the reel, since the start. */
  taken_m: number;
  bait_x_m: number;
  bait_z_m: number;
}

/** The one rule of when a try ends by itself: on a screen, and where advice is tried out. */
export class TryEnd {
  /** Whether one press moves the rod and the next stops it. */
  isPressed = false;
  /** Whether a pointer has hold of the rod: letting go says that the move is over. */
  isHeld = false;
  /** Whether it was started before anything moved. */
  isBegun = false;
  /** Whether the reel has still to do its part, as the task has it. */
  isReelAwaited = false;
  private strayed_deg = 0;
  private rested_s = 0;
  private still: TickOfTry = { t_s: 0, angle_deg: NaN, taken_m: 0, bait_x_m: 0, bait_z_m: 0 };

  /**
   * @param from_deg where the rod begins
   * @param longest_pause_s stillness shorter than this belongs to the try
   */
  constructor(
    private readonly setup: Pick<Setup, 'rod' | 'start'>,
    private readonly from_deg: number,
    private readonly longest_pause_s = 0
  ) {}

  /** How far the hand has moved the tip from where it began, m. */
  get strayed_m(): number {
    return (this.strayed_deg * Math.PI * this.setup.rod.length_m) / 180;
  }

  /** How long it still waits, s; null while hand and bait are in motion, or at a rest that every try may have. */
  get left_s(): number | null {
    return this.rested_s > STILL_S ? this.waits_s - this.rested_s : null;
  }

  /** Whether the pointer at the rod alone keeps it: let go of, the try is over. */
  get isKeptByHand(): boolean {
    return this.isHeld && this.rested_s >= this.restOfTask_s;
  }

  /** Whether the try is over with this tick, the next of it. */
  next(now: TickOfTry): boolean {
    this.strayed_deg = Math.max(this.strayed_deg, Math.abs(now.angle_deg - this.from_deg));
    if (!this.isStillAt(now)) this.still = { ...now };
    this.rested_s = now.t_s - this.still.t_s;
    return this.rested_s >= this.waits_s || now.t_s >= LONGEST_S;
  }

  private get waits_s(): number {
    return Math.max(this.restOfTask_s, this.isHeld ? HELD_S : 0);
  }

  /** A rod that was to wait for the fall and has been moved leaves nothing to wait for. */
  private get restOfTask_s(): number {
    const isLowered = this.setup.start.spool === 'free' && this.strayed_m > TOUCH_TIP_M;
    if (isLowered) return STILL_S;
    const isUnmoved = this.strayed_m <= TOUCH_TIP_M && this.still.taken_m === 0;
    const isAwaited = (this.isBegun && isUnmoved) || this.isReelAwaited;
    return Math.max(
      STILL_S,
      this.longest_pause_s,
      this.isPressed ? PRESSED_S : 0,
      isAwaited ? AWAITED_S : 0
    );
  }

  private isStillAt({ angle_deg, taken_m, bait_x_m, bait_z_m }: TickOfTry): boolean {
    const { still } = this;
    return (
      Math.abs(angle_deg - still.angle_deg) <= STILL_HAND_DEG &&
      Math.abs(taken_m - still.taken_m) <= STILL_BAIT_M &&
      Math.hypot(bait_x_m - still.bait_x_m, bait_z_m - still.bait_z_m) <= STILL_BAIT_M
    );
  }
}
