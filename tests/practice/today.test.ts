import { expect, test } from 'vitest';
import type { Lesson } from '../../src/lib/course';
import { emptyRecord, today, type LearnerRecord, type Phase } from '../../src/lib/practice';
import { aTry } from './samples';

const lesson = (id: string, title: string, minutes: number): Lesson =>
  ({ id, title, minutes }) as Lesson;
const lessons = [lesson('one-foot', 'One foot', 12), lesson('slack', 'Slack', 9)];
const drills = [{ id: 'drag', title: 'The drag', lesson: 'slack', asks: 'travel' as const }];
const START = Date.UTC(2030, 4, 1, 8);
const DAY = 86_400_000;

/** Tries as the schedule reads them, without running the model: each off by 5 %. */
const read = (made: LearnerRecord['tries'][number]) => ({
  phase: made.phase as Phase,
  at_ms: Date.parse(made.at),
  error: 0.05,
  isRight: true
});

function tries(phase: Phase, count: number, from: number) {
  return Array.from({ length: count }, (_, n) =>
    aTry(`${phase}${n}`, {
      phase,
      challenge: `drag-${phase}-7-${n + 1}`,
      at: new Date(START + (from + n) * 60_000).toISOString()
    })
  );
}

const all = [...tries('seen', 8, 0), ...tries('half_seen', 12, 10), ...tries('unseen', 16, 30)];
const progress = (id: string, finished: string | null) => ({
  lesson: id,
  reached: ['about'],
  at: '2030-05-01T08:00:00.000Z',
  finished
});
const at = (record: Partial<LearnerRecord>, now = START) =>
  today({ ...emptyRecord(), ...record }, { lessons, drills }, now, read);

test('a new learner begins the first lesson', () => {
  expect(at({})).toEqual({
    line: 'Begin “One foot”.',
    why: 'It comes next.',
    minutes: 12,
    address: '/lessons/one-foot'
  });
});

test('a lesson in hand is gone on with; a finished one leads to the next', () => {
  expect(at({ progress: [progress('slack', null)] })?.line).toBe('Go on with “Slack”.');
  const finished = progress('one-foot', '2030-05-01T09:00:00.000Z');
  expect(at({ progress: [finished] })?.line).toBe('Begin “Slack”.');
});

test('the drill of a finished lesson comes before the next lesson, once', () => {
  const finished = progress('slack', '2030-05-01T09:00:00.000Z');
  expect(at({ progress: [finished] })?.line).toBe('The drag: with the bait in sight.');
  expect(at({ progress: [finished], tries: all }, START + DAY / 2)?.line).toBe('Begin “One foot”.');
});

test('practice that was begun comes before a lesson', () => {
  expect(at({ tries: all.slice(0, 5), progress: [progress('slack', null)] })).toMatchObject({
    line: 'The drag: with the bait in sight.',
    minutes: 2,
    address: '/ruler/practise?drill=drag'
  });
});

test('a check that is due comes first, and one that is not due waits', () => {
  expect(at({ tries: all }, START + 2 * DAY)).toMatchObject({
    line: 'The drag: see whether it is still there.',
    minutes: 7
  });
  expect(at({ tries: all }, START + DAY / 2)?.line).toBe('Begin “One foot”.');
});

test('tries made in a lesson are no practice', () => {
  expect(at({ tries: [aTry('t1', { challenge: 'drag-seen-7-1' })] })?.line).toBe(
    'Begin “One foot”.'
  );
});

test('when all is done there is nothing to do', () => {
  const done = lessons.map(({ id }) => progress(id, '2030-05-01T09:00:00.000Z'));
  expect(at({ progress: done, tries: all }, START + DAY / 2)).toBeNull();
});
