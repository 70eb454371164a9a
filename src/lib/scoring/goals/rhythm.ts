import * as v from 'valibot';
import { fading } from '../fading';
import { rhythmOf } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** Even hops: longest over shortest gap up to this is full; from the other on it is nothing. */
const EVEN_RATIO = 1.5;
const UNEVEN_RATIO = 2.5;
/** Uneven hops: full from here on; nothing for one that is even to a quarter. */
const VARIED_RATIO = 2;
const MONOTONE_RATIO = 1.25;

/** Longest over shortest time between hops: near one, or not. */
export const rhythm = goalKind({
  schema: v.strictObject({ kind: v.literal('rhythm'), even: v.boolean(), weight }),
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => rhythmOf(result),
  share: ({ even }, value) => {
    if (value === 0) return 0;
    return even
      ? fading(value - EVEN_RATIO, UNEVEN_RATIO - EVEN_RATIO)
      : fading(VARIED_RATIO - value, VARIED_RATIO - MONOTONE_RATIO);
  },
  words: ({ even }, value) => ({
    name: 'Rhythm',
    asked: even ? 'even' : 'uneven',
    reached:
      value === 0 ? 'too few hops to tell' : `longest gap ${value.toFixed(1)} times the shortest`
  }),
  // Hops that are too few are told of as hops.
  miss: ({ even }, value) => {
    if (value === 0) return '';
    return even ? 'the rests weren’t even' : 'the rests were too even';
  },
  advice: ({ even }, value) => {
    if (value === 0) return null;
    return even
      ? 'Count the same after each hop'
      : 'Wait longer before one hop than before the next';
  }
});
