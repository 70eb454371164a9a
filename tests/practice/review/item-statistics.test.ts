import { expect, test } from 'vitest';
import { itemStatistics, MIN_FOR_FIGURES, type Response } from '../../../src/lib/practice';

const options = new Map([
  ['good', ['a', 'b', 'c']],
  ['flat', ['a', 'b']],
  ['rest', []]
]);

/** Takers of rising skill: the better half gets "good" right, "flat" goes by turns. */
const responses: Response[] = Array.from({ length: 40 }, (_, i) => {
  const taker = `t${i}`;
  const rest = { taker, item: 'rest', right: i % 10 < i / 4, option: null };
  const good = { taker, item: 'good', right: i >= 20, option: i >= 20 ? 'a' : 'b' };
  return [rest, good, { taker, item: 'flat', right: i % 2 === 0, option: i % 2 === 0 ? 'a' : 'b' }];
}).flat();

test('tell an item that discriminates from one that does not, and name dead options', () => {
  const [good, flat] = itemStatistics(responses, options);
  expect(good).toMatchObject({ answers: 40, shareRight: 0.5, isWeak: false });
  expect(good.discrimination).toBeGreaterThan(0.3);
  expect(good.options.map(({ option, isDead }) => [option, isDead])).toEqual([
    ['a', false],
    ['b', false],
    ['c', true]
  ]);
  expect(flat.discrimination).toBeLessThan(good.discrimination ?? 0);
});

test('say nothing from too few answers', () => {
  const few = responses.slice(0, 3 * (MIN_FOR_FIGURES - 1));
  expect(itemStatistics(few, options)[0]).toMatchObject({ discrimination: null, isWeak: false });
});
