import { expect, test } from 'vitest';
import { sentMarks, takeWords } from '../../../src/lib/app/try/sent-words';
import { allLessons, findChallenge } from '../../../src/lib/course';
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

test('a sent try names the button that its rod is moved by, bright or dark', () => {
  const said = (id: string) => takeWords(findChallenge(id, allLessons()) as Challenge);
  expect(said('drag-seen-0-1')).toBe('Take the rod, then drag it or hold Sweep.');
  expect(said('offshore-hop')).toBe('Take the rod, then drag it or hold Raise.');
  expect(said('thirty-feet-down')).toBe('Take the rod, then drag it or hold Lower.');
});
