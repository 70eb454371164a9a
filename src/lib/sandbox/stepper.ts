/**
 * Turns frames, which come when they like, into steps of one length. Results depend on the steps
 * alone; the frame rate decides only how often they are looked at.
 */

/** A gap longer than this is no slow frame but a pause, ms: the time in it is dropped. */
const LONGEST_GAP_MS = 400;

export class Stepper {
  private due_ms: number | null = null;

  constructor(private readonly step_ms: number) {}

  /**
   * Calls `step` with the time of each step that is due at `now_ms`.
   * @returns how far `now_ms` lies past the last step, as a share of a step
   */
  advance(now_ms: number, step: (t_ms: number) => void): number {
    if (this.due_ms === null || now_ms - this.due_ms > LONGEST_GAP_MS) this.due_ms = now_ms;
    while (this.due_ms <= now_ms) {
      step(this.due_ms);
      this.due_ms += this.step_ms;
    }
    return 1 - (this.due_ms - now_ms) / this.step_ms;
  }

  /** The next frame starts afresh: nothing is due for the time until then. */
  pause(): void {
    this.due_ms = null;
  }
}
