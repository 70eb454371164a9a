import { expect, test } from 'vitest';
import { verdictText } from '../../../src/lib/app/try/verdict-text';
import { findChallenge, isBlank, loadLessons, nthTry } from '../../../src/lib/course';
import type { Move } from '../../../src/lib/model';
import { isAtStake } from '../../../src/lib/practice';
import { describeTry, gradeTry, type Challenge } from '../../../src/lib/scoring';
import { drag } from '../../practice/drag';

test('a try that failed by its call alone says so', () => {
  const verdictOf = (travel_m: number, move = drag.reference) =>
    verdictText(gradeTry(drag, move, { kind: 'travel', travel_m }).grade);
  expect(verdictOf(0.3)).toBe('Passed');
  expect(verdictOf(0.9)).toBe('Not yet: your call');
  expect(verdictOf(0.9, drag.beginner)).toBe('Not yet: you need 75');
});

test('the call is blamed where it is the one thing to change, and there alone', () => {
  const named: boolean[] = [];
  for (let to_deg = 66; to_deg < 74; to_deg += 0.25)
    for (const travel_m of [0.15, 0.3, 0.36, 0.45]) {
      const guess = { kind: 'travel', travel_m } as const;
      const graded = gradeTry(drag, { ...drag.reference, to_deg } as Move, guess);
      if (graded.grade.passed) continue;
      const isBlamed = verdictText(graded.grade).endsWith('your call');
      const { change } = describeTry(drag, graded, 'imperial', null);
      expect(change.startsWith('Your call'), `${to_deg}: ${change}`).toBe(isBlamed);
      named.push(isBlamed);
    }
  expect(new Set(named).size).toBe(2);
});

test('in sight no move of a half seen challenge counts, right or wrong, and it says why', () => {
  const verdictOf = (move = drag.reference) => verdictText(gradeTry(drag, move).grade, false);
  expect(verdictOf()).toBe('Not counted: you could see it.');
  expect(verdictOf(drag.beginner)).toBe('Not counted: you could see it.');
});

test.each([
  ['bite-or-bottom', 'strike-a-tap'],
  ['bite-or-bottom', 'strike-a-lost-weight'],
  ['hook-set', 'set-on-fish-not-rock']
])('%s: a cast without a bite, left alone, is right and passes nothing: %s', (_, id) => {
  const task = findChallenge(id, loadLessons()) as Challenge;
  const casts = Array.from({ length: 12 }, (_, n) => nthTry(task, n + 1));
  const stakes = casts.map(({ id: challenge }) => isAtStake(task, { challenge }));
  expect(stakes).toEqual(casts.map((one) => !isBlank(one)));
  expect(new Set(stakes)).toEqual(new Set([true, false]));

  const blank = casts.find(isBlank) as Challenge;
  const { grade } = gradeTry(blank, blank.reference);
  expect(grade.passed).toBe(true);
  expect(verdictText(grade, false)).toBe('Right: nothing bit. Cast again');
  const bitten = casts.find((one) => !isBlank(one)) as Challenge;
  expect(verdictText(gradeTry(bitten, bitten.reference).grade, true)).toBe('Passed');
});
