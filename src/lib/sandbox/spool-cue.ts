import type { Trace } from '$lib/model';
import { WORD_S } from './felt-words';
import { WAVE_RATE_HZ } from './felt-wave';

/**
 * What a free spool tells: it ticks while line runs off, and is still when the bait is down. It is told
 * from the line that has run off, which anyone in the boat sees. The model's spool holds nothing back, so
 * line gathers in a loop where it enters the water, as wide as a piece is long; when that is drawn out, its
 * spool stands for up to a second in mid-fall (docs/model.md). A real one runs on while the bait falls and
 * the tip does not give way: that is told for it.
 */

/** One tick of the spool for so much line, m: at the half metre a second of a fall, ten a second. */
const TICK_EVERY_M = 0.05;
/** A tick: how long, s, how high, Hz, and how loud of full scale, for a phone's loudspeaker. */
const TICK = { long_s: 0.006, tone_Hz: 1600, loud: 0.35 } as const;
/**
 * Less line than this in WORD_S is the wind at it, or the rod's give, m. Where a light jig comes under the rod
 * its line runs slowest of all, 5 cm in that time: more, and that would be told as the bottom.
 */
const RUNS_M = 0.03;
/** That it has stopped is told for so long, s. */
const STOPPED_S = 2;

export class SpoolCue {
  /** Line that is told to have run off up to now, m. */
  told_m = 0;
  private given_m = 0;
  private row = 0;
  private readonly past: { t_s: number; told_m: number }[] = [];
  private isRunning = false;
  private stopped_s = -Infinity;

  /** `isFree`: whether line runs off until the bait touches the bottom. */
  constructor(private isFree: boolean) {}

  /** The run has come to row `last` of its trace, which grows from call to call, and so much has run off, m. */
  follow(trace: Trace, last: number, given_m: number): void {
    const { past } = this;
    const t_s = trace.t_s[last];
    if (trace.contact[last]) this.isFree = false;
    const ran_m = given_m - this.given_m;
    this.told_m += ran_m === 0 && this.isFree ? drawn_m(trace, this.row, last) : ran_m;
    [this.given_m, this.row] = [given_m, last];
    past.push({ t_s, told_m: this.told_m });
    while (past.length > 1 && past[1].t_s <= t_s - WORD_S) past.shift();
    const isRunning = this.told_m - past[0].told_m >= RUNS_M;
    if (this.isRunning && !isRunning) this.stopped_s = t_s;
    this.isRunning = isRunning;
  }

  /** The caption, or null where the spool has nothing to tell. */
  word(t_s: number): 'line runs out' | 'the line stops' | null {
    if (this.isRunning) return 'line runs out';
    return t_s - this.stopped_s <= STOPPED_S ? 'the line stops' : null;
  }
}

/** How far the bait fell between two rows beyond what the tip moved, m. */
function drawn_m({ bait_z_m, tip_x_m, tip_z_m }: Trace, from: number, to: number): number {
  const tip_m = Math.hypot(tip_x_m[to] - tip_x_m[from], tip_z_m[to] - tip_z_m[from]);
  return Math.max(0, bait_z_m[from] - bait_z_m[to] - tip_m);
}

/** Adds the ticks of the line that ran off during `wave` to it, within ±1. */
export function addTicks(wave: Float32Array, from_m: number, to_m: number): void {
  const long = Math.round(TICK.long_s * WAVE_RATE_HZ);
  for (let k = Math.floor(from_m / TICK_EVERY_M) + 1; k * TICK_EVERY_M <= to_m; k++) {
    const share = (k * TICK_EVERY_M - from_m) / (to_m - from_m);
    const first = Math.min(Math.floor(share * wave.length), Math.max(0, wave.length - long));
    for (let i = 0; i < long && first + i < wave.length; i++) {
      const tone = Math.sin((2 * Math.PI * TICK.tone_Hz * i) / WAVE_RATE_HZ);
      const tick = TICK.loud * (1 - i / long) * tone;
      wave[first + i] = Math.max(-1, Math.min(1, wave[first + i] + tick));
    }
  }
}
