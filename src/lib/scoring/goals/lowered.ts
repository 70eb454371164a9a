import * as v from 'valibot';
import { formatBeside, formatShare } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { loweredShare } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** So much less of the lift given back earns nothing. */
const REACH = 0.5;
/** Less of it given back is a rod that sags, and not one that is lowered. */
const NO_LOWERING = 0.1;

/** Share of what the tip has drawn that it gives back, 0–1: the rod follows the bait down. */
export const lowered = goalKind({
  schema: v.strictObject({ kind: v.literal('lowered'), least: numberIn(0.05, 1), weight }),
  figure: {
    unit: 'share',
    name: 'How far the rod went down again',
    less: 'too little',
    more: 'too much',
    asked: ({ least }) => [least, 1],
    raise: () => 'Lower the rod again after the lift, as the jig falls.',
    lower: () => 'Lower the rod less after the lift.'
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => loweredShare(result),
  share: ({ least }, value) => fading(least - value, Math.min(REACH, least)),
  words: ({ least }, value) => ({
    name: 'Rod lowered again',
    asked: `by ${formatShare(least)} of the lift or more`,
    reached: formatBeside(value, [least, 1], formatShare)
  }),
  miss: (_, value) => (value < NO_LOWERING ? 'the rod stayed up' : 'the rod came down too little'),
  advice: () => 'Lower the rod again after the lift, as the jig falls',
  step: () => 'back'
});
