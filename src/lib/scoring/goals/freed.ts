import * as v from 'valibot';
import { freedOf } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** The snag lets go, and the hook was not driven home. */
export const freed = goalKind({
  schema: v.strictObject({ kind: v.literal('freed'), weight }),
  role: 'aim',
  isOfOneTurn: false,
  measure: (_, { result }) => freedOf(result),
  share: (_, value) => value,
  words: (_, value) => ({
    name: 'Snag',
    asked: 'freed, hook not driven home',
    reached: value === 0 ? 'not freed' : value < 1 ? 'freed, but driven home first' : 'freed'
  }),
  advice: () => 'Stop pulling: give slack, then shake it, and try from another angle'
});
