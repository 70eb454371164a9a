import * as v from 'valibot';
import { formatBeside, formatLength, formatShare } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { meanPace, swumShare } from './bait-measures';
import { goalKind, range, weight } from './goal-kind';

/** So much less of the way at that height earns nothing. */
const REACH = 0.25;
/** A swim of less of its way only passed through that height. */
const NONE = 0.05;

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
  did: ({ height_m: [low, high], least }, value, units) => {
    const band = `${formatLength(low, units)} to ${formatLength(high, units)} up`;
    if (value < NONE) return `It never swam ${band}.`;
    return `It swam ${band} for ${formatBeside(value, [least, 1], formatShare)} of its way.`;
  },
  drawn: ({ height_m }) => ({ height_m }),
  advice: () => 'Reel evenly: faster lifts it, slower lets it sink'
});
