import { nextPartText } from '../../../src/lib/app/ruler/standing';
import { expect, test } from 'vitest';
import { countText, shownOf } from '../../../src/lib/app/ruler/shown';
import { evenHand, sampleChallenge } from '../../server/samples';

const input = evenHand(sampleChallenge, 9, 3);

test('a kept try is shown again as it was: told or not by its number, with its guess', () => {
  const shown = (n: number) =>
    shownOf(sampleChallenge, 'half_seen', n, { input, guess_m: 0.2, guess_lifted: true });
  expect([0, 1, 2, 3].map((n) => shown(n)?.isTold)).toEqual([true, true, true, false]);
  expect(shown(1)?.guess).toEqual({ kind: 'travel', travel_m: 0.2, lifted: true });
  expect(shownOf(sampleChallenge, 'kept', 0, { input })).toMatchObject({
    isTold: false,
    guess: null
  });
});

test('out of sight a try near enough is told of where its call was wrong', () => {
  const near = evenHand(sampleChallenge, 10, 3);
  const told = (guess_lifted: boolean) =>
    shownOf(sampleChallenge, 'unseen', 3, { input: { ...near }, guess_m: 0.3, guess_lifted });
  expect(told(false)).toMatchObject({ isTold: false, graded: { grade: { passed: true } } });
  expect(told(true)).toMatchObject({ isTold: true, graded: { grade: { passed: false } } });
});

test('tries beyond those asked are counted as such', () => {
  expect([2, 3, 5].map((n) => countText(n, 2))).toEqual([
    'Try\u00a02\u00a0of\u00a02',
    'Try 3, one more than asked',
    'Try 5, 3 more than asked'
  ]);
});

test('what the next part is stands beside what came of the last, before it opens', () => {
  expect(nextPartText('half_seen')).toBe(
    'Part 2: the jig is hidden every other time. Call it then; half the time you see it after.'
  );
});
