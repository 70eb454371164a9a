import { describe, expect, test } from 'vitest';
import type { Lesson } from '../../src/lib/course';
import { nextLesson, today, type Phase } from '../../src/lib/practice';
import { emptyRecord, type LearnerRecord } from '../../src/lib/wire';
import { aTry, anAnswer, daysAt } from './samples';

const lesson = (id: string, title: string, minutes: number): Lesson =>
  ({
    ...{ id, title, minutes, challenges: [{ id: `${id}-try`, title: 'The try' }] },
    sections: [
      { kind: 'see', title: 'See it' },
      { kind: 'try', challenges: [`${id}-try`] },
      { kind: 'feel', title: 'What you’d feel' },
      { kind: 'field', title: 'With a real rod' }
    ]
  }) as unknown as Lesson;
const lessons = [lesson('one-foot', 'One foot', 12), lesson('slack', 'Slack', 9)];
const drills = [{ id: 'drag', title: 'The drag', lesson: 'slack', asks: 'travel' as const }];
const questions = Array.from({ length: 12 }, (_, i) => ({
  item: `question-${i}`,
  kind: 'choose',
  objective: `objective-${i}`,
  lesson: 'one-foot',
  thing: `question-${i}`,
  chance: 1 / 3
}));
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
  finished,
  // The one try of these lessons, left out on purpose.
  ...(finished && { skipped: [`${id}-try`] })
});
/** Today for somebody whose clock is `offset_min` ahead of UTC. */
function at(
  record: Partial<LearnerRecord>,
  now = START,
  { asked = [] as typeof questions, offset_min = 0 } = {}
) {
  const days = daysAt(new Date(now).toISOString(), offset_min);
  const course = { lessons, drills, questions: asked };
  return today({ ...emptyRecord(), ...record }, course, { at_ms: now, days }, read);
}

test('a new learner begins the first lesson', () => {
  expect(at({})).toEqual({
    line: 'Start “One foot”.',
    why: '',
    minutes: 12,
    doors: [{ name: 'Start the lesson', address: '/lessons/one-foot' }]
  });
});

test('a lesson whose end was opened is finished once its tries are passed or skipped', () => {
  const read = {
    lesson: 'one-foot',
    reached: ['about', 'field'],
    at: '2030-05-01T08:00:00.000Z',
    finished: '2030-05-01T09:00:00.000Z'
  };
  const withTry = (marks: number) => [aTry('t', { challenge: 'one-foot-try', marks })];
  expect(at({ progress: [read] })?.line).toBe('Finish “One foot”.');
  expect(at({ progress: [read], tries: withTry(74) })?.line).toBe('Finish “One foot”.');
  expect(at({ progress: [read], tries: withTry(75) })?.line).toBe('Start “Slack”.');
  const skipped = { ...read, skipped: ['one-foot-try'] };
  expect(at({ progress: [skipped] })?.line).toBe('Start “Slack”.');
});

test('a lesson in hand is gone on with; a finished one leads to the next', () => {
  expect(at({ progress: [progress('slack', null)] })?.line).toBe('Finish “Slack”.');
  const finished = progress('one-foot', '2030-05-01T09:00:00.000Z');
  expect(at({ progress: [finished] })?.line).toBe('Start “Slack”.');
});

test('a few hidden tries come between a lesson and the next, and no more', () => {
  const finished = progress('slack', '2030-05-01T09:00:00.000Z');
  expect(at({ progress: [finished] })).toMatchObject({
    line: 'Make 6 hidden tries at “The drag”.',
    minutes: 4,
    doors: [{ name: 'Make 6 hidden tries', address: '/ruler/practise?drill=drag&short' }]
  });
  const hidden = tries('unseen', 6, 0);
  expect(at({ progress: [finished], tries: hidden.slice(0, 5) })?.line).toBe(
    'Make 1 hidden try at “The drag”.'
  );
  expect(at({ progress: [finished], tries: hidden })?.line).toBe('Start “One foot”.');
});

test('a lesson without anything to try waits for the others', () => {
  const talk = { ...lesson('safety', 'Safety first', 5), challenges: [] };
  const course = { lessons: [talk, ...lessons], drills, questions: [] };
  const now = { at_ms: START, days: daysAt(new Date(START).toISOString(), 0) };
  expect(today(emptyRecord(), course, now, read)?.line).toBe('Start “One foot”.');
  const done = lessons.map(({ id }) => progress(id, '2030-05-01T09:00:00.000Z'));
  const record = { ...emptyRecord(), progress: done, tries: tries('unseen', 6, 0) };
  expect(today(record, course, now, read)?.line).toBe('Start “Safety first”.');
});

test('the next lesson is the one in hand, then the first with something to try, and none after the last', () => {
  const talk = { ...lesson('safety', 'Safety first', 5), challenges: [] };
  const all = [talk, ...lessons];
  const done = (ids: readonly string[]) => ({
    ...emptyRecord(),
    progress: ids.map((id) => progress(id, '2030-05-01T09:00:00.000Z'))
  });
  const [first, second] = lessons.map(({ id }) => id);
  expect(nextLesson(emptyRecord(), all)?.id).toBe(first);
  expect(nextLesson(done([first]), all)?.id).toBe(second);
  const begun = { ...done([first]), progress: [progress(second, null)] };
  expect(nextLesson(begun, all)?.id).toBe(second);
  expect(nextLesson(done(all.map(({ id }) => id)), all)).toBe(null);
});

test('practice that was begun comes before a lesson', () => {
  expect(at({ tries: all.slice(0, 2), progress: [progress('slack', null)] })).toMatchObject({
    line: 'Practice “The drag” with the jig in sight.',
    minutes: 4,
    doors: [{ name: 'Go on: part 1 of 4', address: '/ruler/practise?drill=drag' }]
  });
});

test('a lesson that was worked at after the drill is gone on with', () => {
  const opened = { ...progress('slack', null), at: '2030-05-01T10:00:00.000Z' };
  expect(at({ tries: all.slice(0, 2), progress: [opened] })).toMatchObject({
    line: 'Finish “Slack”.',
    doors: [{ name: 'Go on: See it', address: '/lessons/slack#see' }]
  });
  const tried = aTry('t', { challenge: 'slack-try', at: '2030-05-01T10:00:00.000Z', marks: 30 });
  const record = { tries: [...all.slice(0, 2), tried], progress: [progress('slack', null)] };
  expect(at(record)?.line).toBe('Finish “Slack”.');
});

test('a check that is due comes first, and one that is not due waits', () => {
  expect(at({ tries: all }, START + 2 * DAY)).toMatchObject({
    line: 'Check that you still have “The drag”.',
    minutes: 7
  });
  expect(at({ tries: all }, START + DAY / 2)?.line).toBe('Start “One foot”.');
});

test('tries made in a lesson are no practice', () => {
  expect(at({ tries: [aTry('t1', { challenge: 'drag-seen-7-1' })] })?.line).toBe(
    'Start “One foot”.'
  );
});

test('when all is done there is nothing to do', () => {
  const done = lessons.map(({ id }) => progress(id, '2030-05-01T09:00:00.000Z'));
  expect(at({ progress: done, tries: all }, START + DAY / 2)).toBeNull();
});

describe('a lesson that is left in its middle', () => {
  const passed = aTry('t', { challenge: 'one-foot-try', marks: 100 });
  const stands = (station: string, more: Partial<LearnerRecord> = {}) =>
    at(
      {
        progress: [{ ...progress('one-foot', null), reached: ['about', 'see', station] }],
        tries: [{ ...passed, at: '2030-05-01T07:00:00.000Z' }],
        ...more
      },
      START,
      { asked: questions }
    );

  test('is gone on with at the step one stood at, and the questions come second', () => {
    expect(stands('feel')).toMatchObject({
      line: 'Finish “One foot”, then answer 8 questions.',
      doors: [
        { name: 'Go on: What you’d feel', address: '/lessons/one-foot#feel' },
        { name: 'Answer 8 questions', address: '/quiz' }
      ]
    });
  });

  test('is never gone on with at what was passed', () => {
    expect(stands('one-foot-try')?.doors[0].name).toBe('Go on: How it went');
    expect(stands('result')?.doors[0].name).toBe('Go on: What you’d feel');
    const missed = { ...passed, marks: 20, at: '2030-05-01T07:00:00.000Z' };
    expect(stands('one-foot-try', { tries: [missed] })?.doors[0].name).toBe('Go on: The try');
    expect(stands('result', { tries: [missed] })?.doors[0].name).toBe('Go on: How it went');
  });

  test('comes before a check that is due, on the day it was worked at', () => {
    const later = START + 2 * DAY;
    const on = (time: number) => ({
      progress: [{ ...progress('slack', null), at: new Date(time).toISOString() }],
      tries: all
    });
    const names = (time: number) => at(on(time), later)?.doors.map(({ name }) => name);
    expect(names(later)).toEqual(['Go on: See it', 'Check it']);
    expect(names(later - DAY)).toEqual(['Check it']);
  });
});

describe('the questions of the day', () => {
  const asked = questions;
  const done = progress('one-foot', '2030-05-01T09:00:00.000Z');
  /** Gone through, and tried. */
  const learnt = {
    progress: [done],
    tries: [aTry('t', { challenge: 'one-foot-try' })]
  };
  const answers = (count: number, time: string, right = false) =>
    questions
      .slice(0, count)
      .map(({ item }) => anAnswer(item, { item, at: time, right, report: 'knew' }));

  test('wait for the first lesson to be finished', () => {
    expect(at({ progress: [progress('one-foot', null)] }, START, { asked })?.line).toBe(
      'Finish “One foot”.'
    );
    // The talk about safety has nothing to try, and is no first lesson.
    expect(at({ progress: [progress('safety', done.finished)] }, START, { asked })?.line).toBe(
      'Start “One foot”.'
    );
    // Read to its end without a try.
    expect(at({ progress: [done] }, START, { asked })?.line).toBe('Start “Slack”.');
    expect(at(learnt, START, { asked })).toEqual({
      line: 'Answer 8 questions, then start “Slack”.',
      why: 'Questions show what stuck.',
      minutes: 5 + 9,
      doors: [
        { name: 'Answer 8 questions', address: '/quiz' },
        { name: 'Start the lesson', address: '/lessons/slack' }
      ]
    });
  });

  test('are joined to a check that is due, and the way onward waits', () => {
    const record = {
      progress: [done],
      tries: all,
      answers: answers(1, '2030-05-02T08:00:00.000Z')
    };
    expect(at(record, START + 2 * DAY, { asked })).toEqual({
      line: 'Check that you still have “The drag”, then answer 5 questions.',
      why: 'What you can do a day later, with no help, is what counts.',
      minutes: 7 + 3,
      doors: [
        { name: 'Check it', address: '/ruler/practise?drill=drag' },
        { name: 'Answer 5 questions', address: '/quiz' }
      ]
    });
  });

  test('say what was missed apart from what is about to be forgotten', () => {
    const wrong = answers(8, '2030-05-01T08:00:00.000Z');
    const rightOf = (count: number) =>
      wrong.map((one, i) => ({ ...one, right: i < count, report: 'guessed' as const }));
    const why = (given: typeof wrong) =>
      at({ ...learnt, answers: given }, START + 60 * DAY, { asked })?.why;
    expect(why(wrong)).toMatch(/^You missed 8 of them last time, so they’re back\./);
    expect(why(rightOf(1))).toMatch(
      /^You missed 7 of them last time, and you’re about to forget 1\./
    );
    expect(why(rightOf(8))).toMatch(/^You’re about to forget 8 of them, so now’s the time\./);
    // What was missed once and then known is known.
    const later = rightOf(8).map((one) => ({ ...one, at: '2030-05-03T08:00:00.000Z' }));
    expect(why([...later, ...wrong])).toMatch(/^You’re about to forget 8 of them/);
  });

  test('are left out when they are answered, until the next day', () => {
    const record = { ...learnt, answers: answers(8, '2030-05-01T08:00:00.000Z') };
    expect(at(record, START, { asked })?.line).toBe('Start “Slack”.');
    expect(at(record, START + DAY, { asked })?.line).toBe(
      'Answer 8 questions, then start “Slack”.'
    );
  });

  test('are no more after a month away than after a day', () => {
    const record = { ...learnt, answers: answers(12, '2030-05-01T08:00:00.000Z') };
    const after = (days: number) => at(record, START + days * DAY, { asked })?.minutes;
    expect(after(30)).toBe(after(1));
  });

  // Answered at 23:30 UTC on the first of May; asked again at 00:30 UTC, an hour later.
  test.each([
    ['Greenwich, where midnight has passed', 0, 'Answer 8 questions, then start “Slack”.'],
    ['two hours ahead, where both are the second of May', 120, 'Start “Slack”.'],
    ['six hours behind, where both are the first', -360, 'Start “Slack”.']
  ])('go by the learner’s own midnight: %s', (_, offset_min, line) => {
    const record = { ...learnt, answers: answers(8, '2030-05-01T23:30:00.000Z') };
    expect(at(record, Date.UTC(2030, 4, 2, 0, 30), { asked, offset_min })?.line).toBe(line);
  });

  test('come back where the day has begun, though it has not in Greenwich', () => {
    // 20:00 and, three hours later, 23:00 in UTC; at +120 the second is the next day.
    const record = { ...learnt, answers: answers(8, '2030-05-01T20:00:00.000Z') };
    const now = Date.UTC(2030, 4, 1, 23);
    expect(at(record, now, { asked, offset_min: 120 })?.doors[0].address).toBe('/quiz');
    expect(at(record, now, { asked })?.doors[0].address).toBe('/lessons/slack');
  });
});
