import { describe, expect, test } from 'vitest';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);

function rightReplies(source: string): string[] {
  return SEEDS.map((seed) => {
    const { options, key } = itemOf(source, seed).answer as ChooseAnswer;
    return options.find(({ id }) => id === key)?.reply ?? '';
  });
}

describe('a right answer hears why this one', () => {
  test.each(['near-or-far', 'trailer-fall'])('of %s: not the same for all', (source) => {
    expect(new Set(rightReplies(source)).size).toBeGreaterThan(2);
  });
});

test.each(SEEDS)(
  'the longest is asked for only where several stay down or lift, seed %i',
  (seed) => {
    const { ask, answer } = itemOf('pace-limit', seed);
    const { options } = answer as ChooseAnswer;
    const isAlone = !options.some(({ reply }) => reply.includes('but so does'));
    expect(/longest|shortest/.test(ask)).toBe(!isAlone);
  }
);

test.each(SEEDS)('counts to choose among are none that nobody would take, seed %i', (seed) => {
  const { options } = itemOf('fall-count', seed).answer as ChooseAnswer;
  const values = options.map(({ value = NaN }) => value).sort((a, b) => a - b);
  for (const [i, longer] of values.slice(1).entries())
    expect(longer / values[i], `${values}`).toBeLessThan(2.5);
});
