import type { RodBatch } from '$lib/wire';

/**
 * Samples are played so much after the quickest batch so far would have brought them, ms: batches
 * come every 50 ms, and the rest is for those that come late.
 */
const BUFFER_MS = 70;
/** Another phone may take the rod when the one before has been silent for so long, ms. */
const SILENT_MS = 3000;
/** Two clocks drift: the quickest batch is believed a little less with every one after it, ms. */
const FORGET_MS = 0.02;

/** What the screen does with a batch: move the rod to these, by its own clock, ms and degrees. */
export interface RodMoves {
  isAgain: boolean;
  moves: [t_ms: number, turned_deg: number][];
}

/** Turns what a phone tells by its own clock into moves by the screen's clock. */
export class RodFollower {
  private hold: string | null = null;
  private heard_ms = -Infinity;
  private seq = -1;
  private again = 0;
  /** The screen's clock less the phone's, with the way of the quickest batch in it. */
  private ahead_ms = Infinity;

  /** Nothing for what is out of order, or comes from a second phone. */
  take({ hold, seq, again, samples }: RodBatch, now_ms: number): RodMoves {
    if (hold !== this.hold) {
      if (now_ms - this.heard_ms < SILENT_MS) return { isAgain: false, moves: [] };
      Object.assign(this, { hold, seq: -1, again, ahead_ms: Infinity });
    }
    if (seq <= this.seq) return { isAgain: false, moves: [] };
    this.seq = seq;
    this.heard_ms = now_ms;
    const isAgain = again > this.again;
    this.again = again;
    const last = samples.at(-1);
    if (last) this.ahead_ms = Math.min(this.ahead_ms + FORGET_MS, now_ms - last[0]);
    const by_ms = this.ahead_ms + BUFFER_MS;
    return { isAgain, moves: samples.map(([t_ms, turned]) => [t_ms + by_ms, turned]) };
  }
}
