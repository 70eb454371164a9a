import { carriedPull, FELT_RATE_HZ, type Trace } from '$lib/model';

/**
 * Captions for the felt channel. They come from the signal alone, never from what the model knows to
 * have caused it: "bottom or bite?" is asked of readers of captions too.
 */

const STEADY: readonly string[] = ['slack, nothing', 'fine hiss', 'even pull'];

/** Whether a word goes on as it is: the others are over in a moment, and a hand has to answer them. */
export const isSteady = (word: string): boolean => STEADY.includes(word);

/** For who hears the page read: all that is felt of a try out of sight, else what is over at once; captions are read by themselves. */
export function heardOf(
  felt: { readonly word: string; readonly hasCaptions: boolean },
  isHidden: boolean
): string {
  if (felt.hasCaptions) return '';
  return isHidden || !isSteady(felt.word) ? felt.word : '';
}

/** A caption tells of this much time, s. */
export const WORD_S = 0.4;
/** A swing this strong is a knock, N, and the next counts after this long, s. */
const KNOCK_N = 0.09;
const KNOCK_GAP_S = 0.05;
/** Knocks in one caption that make a rattle. */
const RATTLE = 4;
/** A pull that rises or falls by this much is load that builds or goes, N. */
const LOAD_N = 0.2;
/** A hiss swings at least this often and this far. */
const HISS_HZ = 60;
const HISS_N = 0.004;

/**
 * What the last WORD_S of a run feel like, in a word or two; `signal` belongs to `trace`'s last rows.
 * Less pull than `slack_N` cannot be felt.
 */
export function feltWord(
  signal: Float32Array,
  trace: Trace,
  last: number,
  slack_N: number
): string {
  const ticks = Math.round(WORD_S * 100);
  const first = Math.max(0, last - ticks);
  const pulls = Array.from({ length: last + 1 - first }, (_, i) => carriedPull(trace, first + i));
  const mean_N = pulls.reduce((sum, pull) => sum + pull, 0) / pulls.length;
  const knocks = knocksIn(signal);
  if (mean_N < slack_N && knocks === 0) return 'slack, nothing';
  if (knocks >= RATTLE) return 'rattle';
  const load_N = pulls[pulls.length - 1] - pulls[0];
  if (load_N > LOAD_N) return 'load builds';
  if (load_N < -LOAD_N) return 'load gone';
  if (knocks > 0) return knocks === 1 ? 'a knock' : 'knocks';
  return hisses(signal) ? 'fine hiss' : 'even pull';
}

function knocksIn(signal: Float32Array): number {
  let knocks = 0;
  let quiet = Infinity;
  for (const value of signal) {
    quiet++;
    if (Math.abs(value) < KNOCK_N) continue;
    if (quiet > KNOCK_GAP_S * FELT_RATE_HZ) knocks++;
    quiet = 0;
  }
  return knocks;
}

function hisses(signal: Float32Array): boolean {
  let crossings = 0;
  let sum = 0;
  for (let i = 1; i < signal.length; i++) {
    // Slow swings under the hiss would hide its crossings; differences leave them out.
    const step = signal[i] - signal[i - 1];
    const before = i > 1 ? signal[i - 1] - signal[i - 2] : step;
    if (step * before < 0) crossings++;
    sum += signal[i] * signal[i];
  }
  const seconds = signal.length / FELT_RATE_HZ;
  return crossings / 2 / seconds > HISS_HZ && Math.sqrt(sum / signal.length) > HISS_N;
}
