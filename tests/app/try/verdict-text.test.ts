import { expect, test } from 'vitest';
import { verdictText } from '../../../src/lib/app/try/verdict-text';
import { gradeTry } from '../../../src/lib/scoring';
import { drag } from '../../practice/drag';

test('a try that failed by its call alone says so', () => {
  const verdictOf = (travel_m: number, move = drag.reference) =>
    verdictText(gradeTry(drag, move, { kind: 'travel', travel_m }).grade);
  expect(verdictOf(0.3)).toBe('Passed');
  expect(verdictOf(0.9)).toBe('Not yet: your call');
  expect(verdictOf(0.9, drag.beginner)).toBe('Not yet: you need 75');
});

test('in sight a right move of a half seen challenge is no pass, and a wrong one is told as ever', () => {
  const verdictOf = (move = drag.reference) => verdictText(gradeTry(drag, move).grade, false);
  expect(verdictOf()).toBe('Right, in sight. Now do it hidden');
  expect(verdictOf(drag.beginner)).toBe('Not yet: you need 75');
});
