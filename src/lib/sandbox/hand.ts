/**
 * The hand on the rod: where pointer and keys want the rod, and where a wrist can bring it. All times
 * are the events' own times, so a late frame gives the rod the same path as a punctual one.
 */

/**
 * How fast the wrist follows, 1/s. A mouse moves in whole pixels, and one pixel is centimetres at the
 * rod's tip: unsmoothed, the slowest drag would jerk the bait. 22/s is there in a fifth of a second,
 * like a hand; higher lets the pixels through, lower makes a snap impossible.
 */
const WRIST_RATE_PER_S = 22;

/**
 * Pointer events come about this often while it moves, ms; before a longer gap it had been still.
 * It may not exceed what the model runs behind the clock: a tick would know of events or not by the
 * luck of the frame.
 */
const POINTER_PAUSE_MS = 20;

/** Nearer to its target than this the rod is there, degrees: a tenth of what begins a try. */
const THERE_DEG = 0.01;

export interface AngleLimits {
  readonly least_deg: number;
  readonly most_deg: number;
}

interface Wish {
  readonly t_ms: number;
  /** Pointer: the angle it points to. */
  readonly angle_deg?: number;
  /** Keys: which way they turn the rod, −1, 0 or 1. */
  readonly direction?: number;
  /** Keys: the angle at which they turn it no farther; null for none. */
  readonly stop_deg?: number | null;
}

export class Hand {
  /** Where the rod is. */
  angle_deg: number;
  /** How fast held keys turn the rod, °/s. */
  keySpeed_deg_s = 20;
  private speed_deg_s = 0;
  private target_deg: number;
  private direction = 0;
  private stop_deg: number | null = null;
  private heard_ms = -Infinity;
  private readonly wishes: Wish[] = [];

  constructor(
    start_deg: number,
    private readonly limits: AngleLimits
  ) {
    this.angle_deg = start_deg;
    this.target_deg = start_deg;
  }

  /** Where the hand wants the rod now. */
  get wanted_deg(): number {
    return this.target_deg;
  }

  /** Whether the rod is where the hand wants it, with nothing held and nothing still to be followed. */
  get isAtRest(): boolean {
    const isThere = Math.abs(this.angle_deg - this.target_deg) < THERE_DEG;
    return isThere && this.direction === 0 && this.wishes.length === 0;
  }

  /** Whether held keys turn it. */
  get isTurned(): boolean {
    return this.direction !== 0;
  }

  /** The pointer wants the rod at this angle, at this time. */
  pointAt(t_ms: number, angle_deg: number): void {
    this.wishes.push({ t_ms, angle_deg: this.within(angle_deg) });
  }

  /**
   * Keys held from this time on turn the rod up (1), down (−1) or not (0).
   * @param stop_deg where they stop, held or not
   */
  turn(t_ms: number, direction: number, stop_deg: number | null = null): void {
    this.wishes.push({ t_ms, direction, stop_deg });
  }

  /** Moves the rod on by `step_s`, to the time `t_ms`, and returns its angle. */
  advance(t_ms: number, step_s: number): number {
    this.follow(t_ms, step_s * 1000);
    this.target_deg = this.within(this.turned(this.direction * this.keySpeed_deg_s * step_s));
    // Critically damped spring to the target, solved exactly over the step.
    const away = this.angle_deg - this.target_deg;
    const decay = Math.exp(-WRIST_RATE_PER_S * step_s);
    const slope = this.speed_deg_s + WRIST_RATE_PER_S * away;
    this.angle_deg = this.target_deg + (away + slope * step_s) * decay;
    this.speed_deg_s = (this.speed_deg_s - WRIST_RATE_PER_S * slope * step_s) * decay;
    return this.angle_deg;
  }

  private follow(t_ms: number, step_ms: number): void {
    while (this.wishes.length > 0 && this.wishes[0].t_ms <= t_ms) {
      const {
        t_ms: heard_ms,
        direction = 0,
        stop_deg = null,
        angle_deg
      } = this.wishes.shift() as Wish;
      this.heard_ms = heard_ms;
      this.direction = direction;
      this.stop_deg = stop_deg;
      this.target_deg = angle_deg ?? this.target_deg;
    }
    const next = this.wishes[0];
    if (next?.angle_deg === undefined) return;
    const from_ms = Math.max(this.heard_ms, next.t_ms - POINTER_PAUSE_MS);
    if (t_ms <= from_ms) return;
    // The target stands where the step before left it, so only what is left of the way counts.
    const gone_ms = Math.min(t_ms - from_ms, step_ms);
    this.target_deg +=
      ((next.angle_deg - this.target_deg) * gone_ms) / (next.t_ms - t_ms + gone_ms);
  }

  /** Where keys that turn it by this bring it. */
  private turned(by_deg: number): number {
    const to_deg = this.target_deg + by_deg;
    if (this.stop_deg === null || by_deg === 0) return to_deg;
    const isPast = (to_deg - this.stop_deg) * by_deg > 0;
    return isPast ? this.stop_deg : to_deg;
  }

  private within(angle_deg: number): number {
    return Math.min(Math.max(angle_deg, this.limits.least_deg), this.limits.most_deg);
  }
}
