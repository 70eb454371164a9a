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
