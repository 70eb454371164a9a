import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { checkLesson, parseLesson, type LessonReport } from '../../src/lib/course';
import { folders } from '../../src/lib/course/lessons';

const [, oneFoot] = folders;

function checkContent(...args: string[]) {
  return spawnSync('node_modules/.bin/tsx', ['scripts/check-content.ts', ...args], {
    encoding: 'utf8'
  });
}

describe('npm run check:content', () => {
  test('prints a lesson and its challenges with their marks and exits 0', () => {
    const { status, stdout, stderr } = checkContent('one-foot');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(/One foot \(one-foot\), \d+ min/);
    expect(stdout).toMatch(
      /exactly-one-foot +seen +\d+ +\d+ +\d+ +\d+ +\d+ +tip 1\sft\s\d\sin ± .* in \d(\.5)?\ss/
    );
  });

  test('prints the same as one JSON object, challenges of lesson and drill also in one list', () => {
    const { lessons, challenges, faults } = JSON.parse(checkContent('--json', 'hops').stdout);
    expect(faults.filter((fault: string) => !/advice|"/.test(fault))).toEqual([]);
    expect(lessons.map(({ id }: { id: string }) => id)).toEqual(['hops']);
    expect(challenges).toContainEqual(
      expect.objectContaining({ lesson: 'hops', id: 'three-hops-uneven', phase: 'half_seen' })
    );
    expect(challenges).toContainEqual(
      expect.objectContaining({
        lesson: 'hops',
        id: expect.stringMatching(/^hop-kept-1-\d+$/),
        phase: 'kept'
      })
    );
    // Some three hundred runs of the model: ten seconds on an idle machine.
  });

  test('refuses a lesson there is none of', () => {
    const { status, stderr } = checkContent('no-feet');
    expect({ status, stderr }).toEqual({ status: 1, stderr: 'there is no lesson no-feet\n' });
  });

  test('refuses an option it does not know', () => {
    const { status, stderr } = checkContent('--fast');
    expect(status).toBe(1);
    expect(stderr).toBe('unknown option --fast; there is only --json\n');
  });
});

test('a lesson whose beginner passes and whose reference fails is reported', () => {
  const lesson = parseLesson(oneFoot);
  const swapped = lesson.challenges
    .filter(({ id }) => id === 'exactly-one-foot' || id === 'contact-over-rocks')
    .map((challenge) => ({
      ...challenge,
      reference: challenge.beginner,
      beginner: challenge.reference
    }));
  const { faults }: LessonReport = checkLesson({ ...lesson, challenges: swapped });
  expect(faults.filter((fault: string) => !/advice|"|takes/.test(fault))).toEqual([
    expect.stringMatching(/^exactly-one-foot: reference gets \d+, must get 95 or more$/),
    expect.stringMatching(/^exactly-one-foot: beginner gets 100, must get less than 75$/),
    expect.stringMatching(/^exactly-one-foot: a rough hand gets \d+, must get 75 or more$/),
    expect.stringMatching(/^contact-over-rocks: reference gets \d+/),
    expect.stringMatching(/^contact-over-rocks: beginner gets 100/),
    expect.stringMatching(/^contact-over-rocks: a rough hand gets \d+/)
  ]);
});
