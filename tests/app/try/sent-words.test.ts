import { expect, test } from 'vitest';
import { sentMarks } from '../../../src/lib/app/try/sent-words';
import { findChallenge } from '../../../src/lib/course';
import { gradeTry, type Challenge } from '../../../src/lib/scoring';

test('the result of one’s own try says whether it beat the one that was sent', () => {
  const challenge = findChallenge('drag-seen-0-1', []) as Challenge;
  const sent = gradeTry(challenge, challenge.beginner);
  const marks = Math.round(sent.grade.marks);
  expect(sentMarks(sent, undefined)).toBe(`The one you were sent got ${marks}.`);
  expect(sentMarks(sent, marks - 1)).toBe(`The one you were sent got ${marks}.`);
  expect(sentMarks(sent, marks)).toBe(`The one you were sent got ${marks}, too.`);
  expect(sentMarks(sent, marks + 1)).toBe(`The one you were sent got ${marks}: you beat it.`);
});
