import { MOST_TURNS, type RodBatch, type RodPlace } from '$lib/wire';

/** Closer together than this, samples say the same, ms. */
const LEAST_GAP_MS = 14;
export const BATCH_MS = 50;
/** After a failure the next so many turns are left out: a second. */
const REST = 20;

type Send = (batch: RodBatch) => Promise<RodPlace>;

/**
 * Sends how the phone is turned, in batches. One is under way at a time: a slow network gets fewer
 * and longer ones, and what is too old to be worth anything is left out.
 */
export class RodSender {
  private samples: [number, number][] = [];
  private seq = 0;
  private again = 0;
  private isSending = false;
  private isDue = true;
  private rest = 0;

  constructor(
    private readonly hold: string,
    private readonly send: Send,
    private readonly ontold: (place: RodPlace) => void,
    private readonly onfault: (error: unknown) => void
  ) {}

  /** The rod is turned so far from its start now, degrees. */
  turn(t_ms: number, turned_deg: number): void {
    const last = this.samples.at(-1);
    if (last && t_ms - last[0] < LEAST_GAP_MS) last[1] = turned_deg;
    else this.samples.push([t_ms, turned_deg]);
    if (this.samples.length > MOST_TURNS) this.samples.shift();
  }

  /** The rod is wanted back at its start, for another try. */
  tryAgain(): void {
    this.again++;
    this.samples = [];
    this.isDue = true;
  }

  /** To be called every BATCH_MS. The first batch is empty: it asks for the water. */
  async tick(): Promise<void> {
    if (this.rest-- > 0) return;
    if (this.isSending || (this.samples.length === 0 && !this.isDue)) return;
    const { hold, again, samples } = this;
    this.samples = [];
    this.isDue = false;
    this.isSending = true;
    try {
      this.ontold(await this.send({ hold, seq: this.seq++, again, samples }));
    } catch (error) {
      this.isDue = true;
      this.rest = REST;
      this.onfault(error);
    } finally {
      this.isSending = false;
    }
  }
}
