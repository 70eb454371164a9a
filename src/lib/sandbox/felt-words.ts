import { carriedPull, FELT_RATE_HZ, TICK_S, type Trace } from '$lib/model';

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
/** A pull that rises and falls by less than this is even, N. */
const SWING_N = 0.09;
/** What has risen and fallen within this is a knock, and what stays longer a load, s. */
const LOAD_S = 0.5;
/** A pull that has not changed for so long stays as it is, s. */
const SETTLED_S = 0.3;
/** A pull within this of its lowest has not begun to rise, and of its highest not to fall, N. */
const REST_N = 0.01;
/** Knocks in one caption that make a rattle. */
const RATTLE = 4;
/** A load is told by what came before it, too, s; nobody minds what is older. */
const HEARD_S = 3;
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
  const from = Math.max(0, last - ticksIn(HEARD_S));
  const pulls = Array.from({ length: last + 1 - from }, (_, i) => carriedPull(trace, from + i));
  const first = Math.max(0, pulls.length - 1 - ticksIn(WORD_S));
  const swings = swingsOf(pulls);
  const fallen = swings.filter(({ falls }) => falls >= first && falls < Infinity);
  const knocks = fallen.filter(isKnock).length;
  if (meanOf(pulls.slice(first)) < slack_N && knocks === 0) return 'slack, nothing';
  if (knocks >= RATTLE) return 'rattle';
  if (fallen.length > knocks) return 'load gone';
  if (knocks > 0) return knocks === 1 ? 'a knock' : 'knocks';
  const load = swings.findLast(({ rises }) => rises > -Infinity);
  if (load && load.falls === Infinity) {
    const waited = pulls.length - load.rises - ticksIn(LOAD_S);
    // A load that was quickly there is told for as long as any other word.
    if (waited > 0 && (load.tops >= first || waited <= ticksIn(WORD_S))) return 'load builds';
  }
  return hisses(signal) ? 'fine hiss' : 'even pull';
}

const ticksIn = (s: number): number => Math.round(s / TICK_S);

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** A pull that rises, and falls again; in ticks. */
interface Swing {
  /** −Infinity for a pull that was there from the first, or has stayed. */
  readonly rises: number;
  /** When it last went higher. */
  tops: number;
  /** When it has fallen as far as counts; Infinity as long as it has not. */
  falls: number;
}

const isKnock = ({ rises, falls }: Swing): boolean => falls - rises < ticksIn(LOAD_S);

function swingsOf(pulls: readonly number[]): Swing[] {
  const swings: Swing[] = [{ rises: -Infinity, tops: 0, falls: Infinity }];
  let [low, high, changed] = [pulls[0], pulls[0], 0];
  for (let i = 1; i < pulls.length; i++) {
    const now = swings[swings.length - 1];
    const isUp = now.rises > -Infinity && now.falls === Infinity;
    const isDown = now.falls < Infinity;
    if (pulls[i] > high + REST_N && !isDown) [high, now.tops, changed] = [pulls[i], i, i];
    if (pulls[i] < low - REST_N && !isUp) [low, changed] = [pulls[i], i];
    if (!isUp && pulls[i] - low >= SWING_N) {
      // What comes back at once, to less than half of what let go, is the even pull that there was.
      const isBack = isDown && pulls[i] < high / 2;
      swings.push({ rises: isBack ? -Infinity : riseTo(pulls, i), tops: i, falls: Infinity });
      [low, high, changed] = [pulls[i], pulls[i], i];
    } else if (!isDown && high - pulls[i] >= SWING_N) {
      now.falls = i;
      [low, changed] = [pulls[i], i];
    } else if (now.rises > -Infinity && i - changed > ticksIn(SETTLED_S)) {
      swings.push({ rises: -Infinity, tops: i, falls: Infinity });
      [low, high, changed] = [pulls[i], pulls[i], i];
    }
  }
  return swings;
}

/** Where the rise begins that counts as one at tick `i`: most of it lies between. */
function riseTo(pulls: readonly number[], i: number): number {
  let from = i;
  while (from > 0 && pulls[i] - pulls[from] < 0.75 * SWING_N) from--;
  return from;
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
