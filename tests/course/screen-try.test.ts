import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { endsUnacted, onScreen } from '../../src/lib/course/screen-try';
import { advisedMove, gradeTry, type Challenge } from '../../src/lib/scoring';

const challenges = allLessons().flatMap((lesson) => lesson.challenges);
const count = challenges.find(({ id }) => id === 'count-it-down') as Challenge;
const advised = advisedMove(count)?.move ?? count.reference;
/** Gives up before the count said is over: down after 4.7 s, counted to 6. */
const hasty = { ...count, longest_pause_s: 0 };

test('a count that is obeyed passes as the screen takes it, however late the rod follows', () => {
  expect(onScreen(count, advised).grade.passed).toBe(true);
  expect(endsUnacted(count, advised)).toBe(false);
});

test('where the try ends by itself first, what was advised was never done', () => {
  expect(gradeTry(hasty, advised).grade.passed).toBe(true);
  expect(onScreen(hasty, advised).grade).toMatchObject({ marks: 0, passed: false });
  expect(endsUnacted(hasty, advised)).toBe(true);
});

test('who is two seconds late is waited for, too', () => {
  const patient = { ...count, longest_pause_s: 2.5 };
  expect(onScreen(patient, advised).grade.passed).toBe(true);
  expect(endsUnacted(patient, advised)).toBe(true);
});

const counts = challenges.filter(({ goals }) => goals[0].kind === 'bottom_first');

// A count is a person's: a second too quick or too slow in it, and it still lies within what is asked.
test.each(counts)('$id: the count said is well within the time there is', (asked) => {
  const move = advisedMove(asked)?.move ?? asked.reference;
  const [{ value }] = gradeTry(asked, move).grade.goals;
  const [goal] = asked.goals;
  const within_s = goal.kind === 'bottom_first' ? goal.within_s : 0;
  expect(value).toBeGreaterThan(0.9);
  expect(within_s - value).toBeGreaterThan(0.9);
});
