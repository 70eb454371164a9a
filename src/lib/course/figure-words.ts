import { formatLength, formatPull, formatShare, formatTime, type Units } from '../scoring';
import type { MeasureName } from './items/figures';

type Words = readonly [figure: string, of: string];

/** A jig that moved less than this away stayed put, m: half an inch. */
const PUT_M = 0.0127;

const WORDS: Record<MeasureName, (value: number, units: Units) => Words> = {
  travel_m: (m, units) => [
    formatLength(Math.abs(m), units),
    m < -PUT_M ? 'the jig went away from you' : 'the jig came'
  ],
  peak_height_m: (m, units) => [formatLength(m, units), 'off bottom, at most'],
  contact: (share) => [formatShare(share), 'of the move on bottom'],
  fall_s: (s) => [formatTime(s), 'from splash to bottom'],
  airborne_s: (s) => [formatTime(s), 'off bottom'],
  pull_N: (newton, units) => [formatPull(newton, units), 'the hardest pull at the tip']
};

/** What a run came to, as a figure and what it is of. */
export function figureWords(
  { of, value }: { of: MeasureName; value: number },
  units: Units
): Words {
  return WORDS[of](value, units);
}
