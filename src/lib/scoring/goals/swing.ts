import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { largestSwing } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** How far a falling bait swings towards the angler, at most, m. */
export const swing = goalKind({
  schema: v.strictObject({ kind: v.literal('swing'), most_m: numberIn(0.01, 30), weight }),
  role: 'main',
  isOfOneTurn: true,
  measure: (_, { result }) => largestSwing(result),
  share: ({ most_m }, value) => fading(value - most_m, most_m),
  words: ({ most_m }, value, units) => ({
    name: 'Swing of the fall',
    asked: `at most ${formatLength(most_m, units)} toward you`,
    reached: formatBeside(value, [0, most_m], (m) => formatLength(m, units))
  }),
  did: ({ most_m }, value, units) => {
    const swung = formatBeside(value, [0, most_m], (m) => formatLength(m, units));
    return value > most_m
      ? `It swung in ${swung} as it fell; the limit is ${formatLength(most_m, units)}.`
      : `It swung in only ${swung} as it fell.`;
  },
  advice: () => 'Lower the rod with it as it falls',
  step: () => 'back'
});
