import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { fading } from '../fading';
import { NO_MOVE_M } from '../run-measures';
import { numberIn } from '../schema-parts';
import { furthestFromStart } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** The bait never gets further than this from where it lay, m. */
export const stayed = goalKind({
  schema: v.strictObject({ kind: v.literal('stayed'), most_m: numberIn(0.01, 30), weight }),
  role: 'main',
  isOfOneTurn: true,
  measure: (_, { result }) => furthestFromStart(result),
  share: ({ most_m }, value) => fading(value - most_m, most_m),
  words: ({ most_m }, value, units) => ({
    name: 'Stayed',
    asked: `within ${formatLength(most_m, units)}`,
    reached: formatBeside(value, [0, most_m], (m) => formatLength(m, units))
  }),
  did: ({ most_m }, value, units) => {
    const length = (m: number) => formatLength(m, units);
    if (value < NO_MOVE_M) return 'The jig stayed put.';
    return `The jig went ${formatBeside(value, [0, most_m], length)}; within ${length(most_m)} was asked.`;
  },
  drawn: ({ most_m }) => ({ travel_m: [-most_m, most_m] }),
  advice: () => 'Move the slack of the line, and stop before you feel the weight',
  step: () => 'snap'
});
