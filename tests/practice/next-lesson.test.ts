import { expect, test } from 'vitest';
import type { Lesson } from '../../src/lib/course';
import { nextLesson } from '../../src/lib/practice';
import { emptyRecord } from '../../src/lib/wire';

const IDS = ['one-foot', 'slack', 'weight', 'speed'];
const lessons = IDS.map((id) => ({ id, challenges: [{ id: `${id}-try` }] }) as unknown as Lesson);

/** The lesson that comes next for who went through these, one after the other. */
function nextAfter(...through: readonly string[]) {
  const progress = through.map((lesson, i) => {
    const at = `2030-05-0${i + 1}T09:00:00.000Z`;
    const skipped = [`${lesson}-try`];
    return { id: `p-${lesson}`, lesson, at, finished: at, reached: ['end'], answers: {}, skipped };
  });
  return nextLesson({ ...emptyRecord(), progress } as never, lessons)?.id;
}

test('after a lesson comes the one after it, wherever one began, as its own end says', () => {
  expect(nextAfter()).toBe('one-foot');
  expect(nextAfter('weight')).toBe('speed');
  expect(nextAfter('weight', 'one-foot')).toBe('slack');
});

test('what was left out before is next once none comes after', () => {
  expect(nextAfter('weight', 'speed')).toBe('one-foot');
  expect(nextAfter('one-foot', 'slack', 'weight', 'speed')).toBeUndefined();
});
