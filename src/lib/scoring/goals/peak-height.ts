import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { fading } from '../fading';
import { goalKind, length, weight } from './goal-kind';

/** So much higher earns nothing, m. */
const REACH_M = 0.15;

/** Highest clearance above the bottom, m. */
export const peakHeight = goalKind({
  schema: v.strictObject({ kind: v.literal('peak_height'), most_m: length, weight }),
  role: 'side',
  isOfOneTurn: true,
  measure: (_, { result }) => result.peak_height_m,
  share: ({ most_m }, value) => fading(value - most_m, REACH_M),
  words: ({ most_m }, value, units) => ({
    name: 'Height',
    asked: `at most ${formatLength(most_m, units)} off the bottom`,
    reached: formatBeside(value, [0, most_m], (m) => formatLength(m, units))
  }),
  miss: () => '',
  drawn: ({ most_m }) => ({ height_m: [0, most_m] }),
  advice: null
});
