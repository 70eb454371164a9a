import * as v from 'valibot';
import { fading } from '../fading';
import { whole } from '../schema-parts';
import { goalKind, weight } from './goal-kind';

/** Stones to touch, by their index in the setup's bottom. */
export const stones = goalKind({
  schema: v.strictObject({
    kind: v.literal('stones'),
    touched: v.pipe(v.array(whole(0, 199)), v.minLength(1, 'must name a stone')),
    weight
  }),
  figure: {
    unit: 'count',
    name: 'Rocks touched',
    less: 'too few',
    more: 'too many',
    asked: ({ touched }) => [touched.length, touched.length],
    raise: (off) => `Keep it down over every rock: ${off} more to touch.`,
    lower: (off) => `Touch ${off} fewer.`
  },
  role: 'main',
  isOfOneTurn: true,
  measure: ({ touched }, { result }) =>
    touched.filter((index) => result.stones[index]?.touched).length,
  share: ({ touched }, value) => fading(touched.length - value, touched.length),
  words: ({ touched }, value) => ({
    name: 'Rocks touched',
    asked: `${touched.length}`,
    reached: `${value}`
  }),
  // The first sentence counts them.
  miss: () => '',
  advice: null
});
