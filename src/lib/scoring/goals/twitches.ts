import * as v from 'valibot';
import { earnedByAll } from '../fading';
import { timesOf } from '../times-of';
import { whole } from '../schema-parts';
import { countDraws, countSmallDraws, countTwitches, twitchMisses } from './tip-measures';
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
    raise: (off) => `Twitch it ${off} more times.`,
    lower: (off) => `Twitch it ${off} fewer times.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => countTwitches(result),
  share: ({ count }, _, { result }) => earnedByAll(twitchMisses(result, count)),
  words: ({ count }, value) => ({
    name: 'Twitches',
    asked: `${count} or more`,
    reached: `${value}`
  }),
  did: ({ count }, value, _, result) => {
    if (value >= count) return `You twitched it ${timesOf(value)}.`;
    const draws = countDraws(result);
    if (draws === 0) {
      return countSmallDraws(result) > 0
        ? 'You twitched it too little to draw line.'
        : `You never twitched it; we asked for ${count}.`;
    }
    if (draws < count) return `You twitched it ${timesOf(draws)}, not ${timesOf(count)}.`;
    const rested = value === 0 ? 'without a rest' : `but rested after only ${value}`;
    return `You twitched it ${timesOf(draws)}, ${rested}.`;
  },
  advice: ({ count }, _, result) => {
    const draws = countDraws(result);
    if (draws >= count) return 'Rest a moment after each twitch';
    // All of them, since it stands over the next try, which begins at none.
    if (draws > 0) return `Twitch it ${timesOf(count)}, tip back down and a short rest after each`;
    return countSmallDraws(result) > 0
      ? 'Twitch it a little farther'
      : 'Twitch the tip, with the line given back and a short rest each time';
  },
  step: (_, __, result) => (countDraws(result) === 0 ? 'snap' : null)
});
