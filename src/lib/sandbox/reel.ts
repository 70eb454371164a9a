import { REEL_M_S } from '$lib/scoring';

/**
 * The reel: held keys or buttons take line in or give it. As for the hand, times are the events' own.
 */

/** How fast a crank comes up to speed and stops, 1/s: a jerk of the reel would move the bait. */
const CRANK_RATE_PER_S = 12;
/** More than this is never taken in or given, m: the model's own bound. */
const MOST_M = 60;

export class Reel {
  /** How fast a held button takes line in or gives it, m/s. */
  pace_m_s = REEL_M_S;
  /** Line taken in since the start, m; negative is line given. */
  taken_m = 0;
  private speed_m_s = 0;
  private direction = 0;
  private readonly wishes: { t_ms: number; direction: number }[] = [];

  /** Held from this time on: takes line in (1), gives it (−1) or stands (0). */
  turn(t_ms: number, direction: number): void {
    this.wishes.push({ t_ms, direction });
  }

  /** Whether a crank turns or is about to. */
  get isTurning(): boolean {
    return this.direction !== 0 || this.wishes.some(({ direction }) => direction !== 0);
  }

  /** Turns on by `step_s`, to the time `t_ms`, and returns the line taken in, m. */
  advance(t_ms: number, step_s: number): number {
    while (this.wishes.length > 0 && this.wishes[0].t_ms <= t_ms) {
      this.direction = this.wishes.shift()?.direction ?? 0;
    }
    const wanted = this.direction * this.pace_m_s;
    this.speed_m_s = wanted + (this.speed_m_s - wanted) * Math.exp(-CRANK_RATE_PER_S * step_s);
    const taken_m = this.taken_m + this.speed_m_s * step_s;
    this.taken_m = Math.min(Math.max(taken_m, -MOST_M), MOST_M);
    return this.taken_m;
  }
}
