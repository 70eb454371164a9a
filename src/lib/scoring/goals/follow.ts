import * as v from 'valibot';
import { formatBeside, formatShare } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { followedShare, isDropped } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** A rod that went down so little was held. */
const NOT_AT_ALL = 0.1;

/** How closely the rod goes down with the falling bait, 0–1 (see followedShare). */
export const follow = goalKind({
  schema: v.strictObject({ kind: v.literal('follow'), least: numberIn(0.05, 1), weight }),
  figure: {
    unit: 'share',
    name: 'How closely the rod followed',
    less: 'too loosely',
    more: 'too closely',
    asked: ({ least }) => [least, 1],
    raise: () => 'Lower the rod with the fall, from its start to its end.',
    lower: () => 'Lower the rod a little later than the fall.'
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => followedShare(result),
  share: ({ least }, value) => fading(least - value, least),
  words: ({ least }, value) => ({
    name: 'Rod went down with it',
    asked: `${formatShare(least)} or more of the way`,
    reached: formatBeside(value, [least, 1], formatShare)
  }),
  miss: (_, value, __, result) => {
    if (isDropped(result)) return 'the rod dropped ahead of it, and left slack';
    return value < NOT_AT_ALL ? 'the rod stayed up' : 'the rod didn’t follow the fall';
  },
  advice: () => 'Lower the rod at the pace of the fall, from its start to its end',
  step: () => 'back'
});
