import * as v from 'valibot';
import { clamped } from '../fading';
import { timesOf } from '../times-of';
import { whole } from '../schema-parts';
import { countTwitches } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** So many times the tip draws and gives back line. */
export const twitches = goalKind({
  schema: v.strictObject({ kind: v.literal('twitches'), count: whole(1, 50), weight }),
  figure: {
    unit: 'count',
    name: 'Twitches',
    less: 'too few',
    more: 'too many',
    asked: ({ count }) => [count, null],
    raise: (off) => `Twitch it ${off} times more.`,
    lower: (off) => `Twitch it ${off} times less.`
  },
  role: 'aim',
  isOfOneTurn: false,
  measure: (_, { result }) => countTwitches(result),
  share: ({ count }, value) => clamped(value / count),
  words: ({ count }, value) => ({
    name: 'Twitches',
    asked: `${count} or more`,
    reached: `${value}`
  }),
  did: ({ count }, value) => {
    const times = value === 0 ? 'never twitched it' : `twitched it ${timesOf(value)}`;
    return value >= count ? `You ${times}.` : `You ${times}, not ${timesOf(count)}.`;
  },
  advice: (_, value) =>
    value === 0 ? 'Twitch the tip, and give the line back each time' : 'Twitch it more often'
});
