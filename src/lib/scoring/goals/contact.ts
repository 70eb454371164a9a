import * as v from 'valibot';
import { formatBeside, formatShare } from '../display';
import { fading } from '../fading';
import { contactWhileMoving } from '../run-measures';
import { numberIn } from '../schema-parts';
import { goalKind, weight } from './goal-kind';

/** So much less contact earns nothing: the bait flew for as long as it was drawn. */
const REACH = 0.25;

/** Share of the bait's moving time that it touched the bottom, 0–1. */
export const contact = goalKind({
  schema: v.strictObject({ kind: v.literal('contact'), least: numberIn(0, 1), weight }),
  role: 'side',
  isOfOneTurn: true,
  measure: (_, { result }) => contactWhileMoving(result),
  share: ({ least }, value) => fading(least - value, REACH),
  words: ({ least }, value) => ({
    name: 'On the bottom',
    asked: `at least ${formatShare(least)} of the time it moved`,
    reached: formatBeside(value, [least, 1], formatShare)
  }),
  miss: () => '',
  drawn: () => ({ isOnBottom: true }),
  advice: null
});
