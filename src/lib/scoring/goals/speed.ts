import * as v from 'valibot';
import { formatBeside, formatPace, type Units } from '../display';
import { fading } from '../fading';
import { peakBaitSpeed } from '../run-measures';
import { numberIn } from '../schema-parts';
import { goalKind, weight } from './goal-kind';

/** Twice the speed allowed earns nothing. */
const REACH_IN_LIMITS = 1;

const besideLimit = (value: number, most_m_s: number, units: Units) =>
  formatBeside(value, [0, most_m_s], (m_s) => formatPace(m_s, units));

/** Fastest tenth of a second of the bait along the bottom, m/s. */
export const speed = goalKind({
  schema: v.strictObject({ kind: v.literal('speed'), most_m_s: numberIn(0.01, 20), weight }),
  role: 'side',
  isOfOneTurn: true,
  measure: (_, { result }) => peakBaitSpeed(result),
  share: ({ most_m_s }, value) => fading(value - most_m_s, REACH_IN_LIMITS * most_m_s),
  words: ({ most_m_s }, value, units) => ({
    name: 'Top speed',
    asked: `no faster than ${formatPace(most_m_s, units)}`,
    reached: besideLimit(value, most_m_s, units)
  }),
  // A bait that flew has its speed explained already.
  miss: ({ most_m_s }, value, units, { hops }) =>
    value <= most_m_s || hops.length > 0
      ? ''
      : `but at its quickest it went ${besideLimit(value, most_m_s, units)}; the limit is ${formatPace(most_m_s, units)}`,
  drawn: ({ most_m_s }) => ({ speed_m_s: [0, most_m_s] }),
  advice: null
});
