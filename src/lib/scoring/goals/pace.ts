import * as v from 'valibot';
import { formatSpeed } from '../display';
import { fading } from '../fading';
import { meanBaitSpeed } from './bait-measures';
import { goalKind, range, weight } from './goal-kind';

/** Outside its range by this part of the range's near edge, a pace earns nothing. */
const REACH_IN_EDGES = 0.5;

/** Mean speed of the bait along the bottom while it moved, m/s. */
export const pace = goalKind({
  schema: v.strictObject({ kind: v.literal('pace'), m_s: range(20), weight }),
  role: 'aim',
  isOfOneTurn: true,
  measure: (_, { result }) => meanBaitSpeed(result),
  share: ({ m_s: [low, high] }, value) =>
    value < low
      ? fading(low - value, REACH_IN_EDGES * low)
      : fading(value - high, REACH_IN_EDGES * high),
  words: ({ m_s: [low, high] }, value, units) => ({
    name: 'Pace',
    asked: `${formatSpeed(low, units)} to ${formatSpeed(high, units)}`,
    reached: formatSpeed(value, units)
  }),
  advice: ({ m_s }, value) =>
    value > m_s[1] ? 'Go slower over the same way' : 'Go a little quicker'
});
