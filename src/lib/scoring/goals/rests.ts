import * as v from 'valibot';
import type { Result } from '../../model';
import { formatTime } from '../display';
import { clamped, earnedByAll } from '../fading';
import { numberIn, whole } from '../schema-parts';
import { timesOf } from '../times-of';
import { restsBetweenMoves } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** A rest of half the length asked earns nothing. */
const REACH = 0.5;

/** Of more rests than these it is told how many there were, and not how long each was. */
const MOST_NAMED = 3;

/** Shorter stillness parts no two moves, s. */
const ANY_REST_S = 0.3;

/** How often the bait was moved, or hopped, with any rest between. */
function movesOf(result: Result): number {
  return Math.max(result.hops.length, restsBetweenMoves(result, ANY_REST_S).length + 1);
}

/** So many rests of the bait between its moves, each so long or longer. */
export const rests = goalKind({
  schema: v.strictObject({
    kind: v.literal('rests'),
    count: whole(1, 50),
    least_s: numberIn(1, 120),
    weight
  }),
  figure: {
    unit: 's',
    name: 'How long it rested',
    less: 'too short',
    more: 'too long',
    asked: ({ least_s }) => [least_s, null],
    // The shortest of those that were asked.
    of: ({ count }, { result }) => restsBetweenMoves(result).sort((a, b) => b - a)[count - 1] ?? 0,
    raise: (off) => `Let it lie ${off} longer.`,
    lower: (off) => `Let it lie ${off} less.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: ({ least_s }, { result }) =>
    restsBetweenMoves(result).filter((rest_s) => rest_s >= least_s).length,
  share: ({ count, least_s }, _, { result }) => {
    const longest = restsBetweenMoves(result).sort((a, b) => b - a);
    const missOf = (rest_s: number) => clamped((least_s - rest_s) / (REACH * least_s));
    return earnedByAll(Array.from({ length: count }, (_, i) => missOf(longest[i] ?? 0)));
  },
  words: ({ count, least_s }, value) => ({
    name: 'Rests',
    asked: `${count} of ${formatTime(least_s)} or longer`,
    reached: `${value}`
  }),
  did: ({ count, least_s }, value, _units, result) => {
    if (value < count) return null;
    if (value > MOST_NAMED) return `It rested ${formatTime(least_s)} or longer, ${timesOf(value)}.`;
    const long = restsBetweenMoves(result).filter((rest_s) => rest_s >= least_s);
    return `It rested ${long.map(formatTime).join(', then ')}.`;
  },
  miss: ({ count, least_s }, value) => {
    const asked = `${formatTime(least_s)} or longer`;
    return value === 0
      ? `it never rested ${asked}`
      : `it rested ${asked} ${timesOf(value)}, not ${timesOf(count)}`;
  },
  // So many rests take one move more: who made too few moves has not rested too little.
  advice: ({ count }, _, result) =>
    movesOf(result) <= count
      ? `Move it ${timesOf(count + 1)}, and let it lie in between`
      : 'Let it lie longer between your moves',
  step: () => 'rest'
});
