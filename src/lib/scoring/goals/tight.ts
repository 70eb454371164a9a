import * as v from 'valibot';
import { formatBeside, formatPull } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { pullAtEnd } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** Pull of the line at the tip at the end, N. */
export const tight = goalKind({
  schema: v.strictObject({ kind: v.literal('tight'), least_N: numberIn(0.001, 100), weight }),
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => pullAtEnd(result),
  share: ({ least_N }, value) => fading(least_N - value, least_N),
  words: ({ least_N }, value, units) => ({
    name: 'Line at the end',
    asked: `pulls ${formatPull(least_N, units)} or more`,
    reached: formatBeside(value, [least_N, Infinity], (pull) => formatPull(pull, units))
  }),
  miss: () => 'the line hung slack at the end',
  advice: () => 'Reel in the slack that your rod has made'
});
