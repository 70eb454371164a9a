import * as v from 'valibot';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { goalKind, weight } from './goal-kind';
import { pullBeforeSweep } from './tip-measures';

/**
 * Pull at the tip before the firm sweep, N: slack is gone once the jig is felt. Only the jig is on the line, so
 * the force on a hook in a fish is not graded (docs/decisions).
 */
export const cameTight = goalKind({
  schema: v.strictObject({ kind: v.literal('came_tight'), least_N: numberIn(0.001, 10), weight }),
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => pullBeforeSweep(result) ?? NaN,
  share: ({ least_N }, value) => (Number.isNaN(value) ? 0 : fading(least_N - value, least_N)),
  // No hand counts ounces: it is felt, or it is not.
  words: ({ least_N }, value) => ({
    name: 'Line before the sweep',
    asked: 'tight',
    reached: Number.isNaN(value) ? 'never swept' : value < least_N ? 'slack' : 'tight'
  }),
  miss: (_, value) => (Number.isNaN(value) ? '' : 'there was slack in the line when you swept'),
  did: ({ least_N }, value) => (value >= least_N ? 'You came tight before you swept.' : null),
  advice: (_, value) =>
    Number.isNaN(value) ? null : 'Reel down until you feel the jig, then sweep'
});
