import { describe, expect, test } from 'vitest';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';
import { inUnits } from '../../src/lib/scoring';

const SEEDS = Array.from({ length: 24 }, (_, i) => i + 1);
const read = (text: string) => inUnits(text, 'imperial').replaceAll('\u00a0', ' ');

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

test('the pace that hops a jig is not always the same', () => {
  const hops = SEEDS.map((seed) => itemOf('weight-and-pace', seed)).filter(({ ask }) =>
    ask.includes('then off bottom')
  );
  const paces = hops.map(({ answer }) => {
    const { options, key } = answer as ChooseAnswer;
    return read(options.find(({ id }) => id === key)?.says ?? '').split('swept in ')[1];
  });
  expect(new Set(paces).size).toBeGreaterThan(1);
});
