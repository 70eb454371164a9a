import { expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { byHand } from '../../src/lib/course/hand';
import { gradeTry, PASS_MARK } from '../../src/lib/scoring';

test('a foot dragged twice too far earns no more than one that is half as long', () => {
  const challenge = findChallenge('exactly-one-foot', allLessons());
  if (!challenge) throw new Error('no such challenge');
  const marks = (reach: number) => {
    const hand = { reach, pace: 0, isEven: false };
    return gradeTry(challenge, byHand(challenge.reference, challenge.start, hand)).grade.marks;
  };
  expect(marks(0)).toBeGreaterThanOrEqual(PASS_MARK);
  expect(Math.abs(marks(1.1) - marks(-0.5))).toBeLessThan(15);
  expect(marks(1.1)).toBeLessThan(50);
});
