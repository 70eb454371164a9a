import { expect, test } from 'vitest';
import { isTold, planOf, type Phase } from '../../src/lib/practice';

const cases: [Phase, number, number, boolean][] = [
  ['seen', 0, 0, true],
  ['seen', 7, 0.9, true],
  ['half_seen', 0, 0.9, true],
  ['half_seen', 1, 0, true],
  ['half_seen', 2, 0, true],
  ['half_seen', 3, 0.9, false],
  ['half_seen', 4, 0, true],
  ['half_seen', 5, 0, true],
  ['unseen', 0, 0.14, false],
  ['unseen', 0, -0.16, true],
  ['unseen', 8, 0.14, true],
  ['unseen', 8, -0.09, false],
  ['kept', 3, 0.9, false]
];

test.each(cases)('%s, try %d, off by %d: told %s', (phase, n, error, told) => {
  expect(isTold(phase, n, error)).toBe(told);
});

test('the bait is hidden in turn, then always, and guessed before it is shown', () => {
  const hidden = (phase: Phase) => [0, 1, 2, 3].map((n) => planOf(phase, n).isHidden);
  expect(hidden('seen')).toEqual([false, false, false, false]);
  expect(hidden('half_seen')).toEqual([false, true, false, true]);
  expect(hidden('unseen')).toEqual([true, true, true, true]);
  expect(hidden('kept')).toEqual([true, true, true, true]);
  const guessed = (phase: Phase) => [0, 1].map((n) => planOf(phase, n).asksGuess);
  expect(guessed('seen')).toEqual([false, false]);
  expect(guessed('half_seen')).toEqual([false, true]);
  expect(guessed('unseen')).toEqual([true, true]);
  expect(guessed('kept')).toEqual([false, false]);
});
