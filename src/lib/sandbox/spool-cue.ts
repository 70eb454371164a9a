import { WORD_S } from './felt-words';
import { WAVE_RATE_HZ } from './felt-wave';

/**
 * What a free spool tells: it ticks while line runs off, and is still when the bait is down. It is told
 * from the line that has run off alone, which anyone in the boat sees.
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
  private readonly past: { t_s: number; given_m: number }[] = [];
  private isRunning = false;
  private stopped_s = -Infinity;

  /** Line that has run off up to now, m; `t_s` grows from call to call. */
  follow(t_s: number, given_m: number): void {
    const { past } = this;
    past.push({ t_s, given_m });
    while (past.length > 1 && past[1].t_s <= t_s - WORD_S) past.shift();
    const isRunning = given_m - past[0].given_m >= RUNS_M;
    if (this.isRunning && !isRunning) this.stopped_s = t_s;
    this.isRunning = isRunning;
  }

  /** The caption, or null where the spool has nothing to tell. */
  word(t_s: number): 'line runs out' | 'the line stops' | null {
    if (this.isRunning) return 'line runs out';
    return t_s - this.stopped_s <= STOPPED_S ? 'the line stops' : null;
  }
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
