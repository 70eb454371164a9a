import * as v from 'valibot';
import { formatBeside, formatLength, formatShare } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { draggedShare, meanPace, swumShare } from './bait-measures';
import { goalKind, range, weight } from './goal-kind';

/** So much less of the way at that height earns nothing. */
const REACH = 0.25;
/** A swim of less of its way only passed through that height. */
const NONE = 0.05;
/** On the bottom for more of its way it dragged. */
const MOSTLY = 0.5;

/** Share of the bait's level way, 0–1, made at this height above the bottom under it. */
export const swim = goalKind({
  schema: v.strictObject({
    kind: v.literal('swim'),
    height_m: range(30),
    least: numberIn(0.01, 1),
    weight
  }),
  figure: {
    unit: 'm/s',
    name: 'How fast it swam',
    less: 'too slow',
    more: 'too fast',
    // A height is asked: the speed is what the hand changes it with.
    asked: () => null,
    of: (_, run) => meanPace(run),
    raise: (off) => `Reel ${off} faster.`,
    lower: (off) => `Reel ${off} slower.`,
    steady: 'Reel evenly: faster lifts it, slower lets it sink.'
  },
  role: 'main',
  isOfOneTurn: false,
  measure: ({ height_m: [low, high] }, run) => swumShare(run, low, high),
  share: ({ least }, value) => fading(least - value, REACH),
  words: ({ height_m: [low, high], least }, value, units) => ({
    name: 'Height of the swim',
    asked: `${formatShare(least)} of the way between ${formatLength(low, units)} and ${formatLength(high, units)} up`,
    reached: formatBeside(value, [least, 1], formatShare)
  }),
  did: ({ height_m: [low, high], least }, value, units, result) => {
    const band = `${formatLength(low, units)} to ${formatLength(high, units)} up`;
    if (value < NONE && draggedShare(result) > MOSTLY) return 'It dragged along the bottom.';
    if (value < NONE) return `It never swam ${band}.`;
    return `It swam ${band} for ${formatBeside(value, [least, 1], formatShare)} of its way.`;
  },
  drawn: ({ height_m }) => ({ height_m }),
  advice: ({ height_m: [low, high] }, _, result) => {
    if (result.peak_height_m < low) return 'Lift it off bottom first, then reel faster';
    if (draggedShare(result) > MOSTLY) return 'Reel faster: it sank back to the bottom';
    if (result.peak_height_m > high) return 'Reel slower: it swam too high';
    return 'Reel evenly: faster lifts it, slower lets it sink';
  }
});
