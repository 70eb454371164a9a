import { expect, test } from 'vitest';
import { lessonsDone } from '../../../src/lib/app/homework/lessons-done';
import { allLessons, findLesson, type Lesson } from '../../../src/lib/course';
import { applyChange } from '../../../src/lib/practice';
import { PASS_MARK } from '../../../src/lib/scoring';
import { emptyRecord } from '../../../src/lib/wire';
import { aTry } from '../../practice/samples';

const oneFoot = findLesson('one-foot', allLessons()) as Lesson;
const at = '2030-05-01T08:00:00.000Z';

const read = (lesson: string) =>
  applyChange(emptyRecord(), { kind: 'finished', lesson, station: 'result', at });

test('a lesson that was only read through is not done, however long one looked at it', async () => {
  expect(await lessonsDone(['one-foot'], read('one-foot'))).toEqual([]);
});

test('a lesson that was read and whose every try was passed is done, one that asks no try by reading', async () => {
  const tries = oneFoot.challenges.map(({ id }, i) => ({
    ...aTry(`${i}`),
    challenge: id,
    marks: PASS_MARK
  }));
  expect(await lessonsDone(['one-foot', 'slack'], { ...read('one-foot'), tries })).toEqual([
    'one-foot'
  ]);
  expect(await lessonsDone(['safety'], read('safety'))).toEqual(['safety']);
});
