import { describe, expect, test } from 'vitest';
import { itemOf, type ChooseAnswer, type Item } from '../../src/lib/course/items';
import { inUnits } from '../../src/lib/scoring';
import { sampled } from '../samples';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);
const read = (text: string) => inUnits(text, 'imperial').replaceAll('\u00a0', ' ');

/** How many different ones there are among the questions; no more of them are made once there are enough. */
function countDifferent(source: string, enough: number, of: (item: Item) => string | undefined) {
  const different = new Set<string>();
  for (const seed of SEEDS) {
    if (different.size === enough) break;
    const one = of(itemOf(source, seed));
    if (one !== undefined) different.add(one);
  }
  return different.size;
}

function rightOf({ answer }: Item) {
  const { options, key } = answer as ChooseAnswer;
  return options.find(({ id }) => id === key);
}

describe('a right answer hears why this one', () => {
  test.each(['near-or-far', 'trailer-fall'])('of %s: not the same for all', (source) => {
    expect(countDifferent(source, 3, (item) => rightOf(item)?.reply ?? '')).toBe(3);
  });
});

test.each(sampled(SEEDS, 3))(
  'the longest is asked for only where several stay down or lift, seed %i',
  (seed) => {
    const { ask, answer } = itemOf('pace-limit', seed);
    const { options } = answer as ChooseAnswer;
    const isAlone = !options.some(({ reply }) => reply.includes('but so does'));
    expect(/longest|shortest/.test(ask)).toBe(!isAlone);
  }
);

/** Of this, among others, one count was more than twice and a half the one before it; it is the soonest made. */
const ONCE_FAR_APART = 14;

test.each(sampled(SEEDS, 0, [ONCE_FAR_APART]))(
  'counts to choose among are none that nobody would take, seed %i',
  (seed) => {
    const { options } = itemOf('fall-count', seed).answer as ChooseAnswer;
    const values = options.map(({ value = NaN }) => value).sort((a, b) => a - b);
    for (const [i, longer] of values.slice(1).entries())
      expect(longer / values[i], `${values}`).toBeLessThan(2.5);
  }
);

test('the pace that hops a jig is not always the same', () => {
  const paceOf = (item: Item) =>
    item.ask.includes('then off bottom')
      ? read(rightOf(item)?.says ?? '').split('swept in ')[1]
      : undefined;
  expect(countDifferent('weight-and-pace', 2, paceOf)).toBe(2);
});
