import { expect, test } from 'vitest';
import { groupsOf } from '../../../src/lib/app/lesson/groups';
import { tabName } from '../../../src/lib/app/lesson/tab-name';
import { bestOf } from '../../../src/lib/app/try/graded-try';
import { thumbOf } from '../../../src/lib/app/try/drawn-thumb';
import { allLessons, findLesson, lessonNumber, type Lesson } from '../../../src/lib/course';
import { applyChange, leftAt, lessonMarks, marksText } from '../../../src/lib/practice';
import { aTry } from '../../practice/samples';
import { asksCall, PASS_MARK } from '../../../src/lib/scoring';
import { emptyRecord, type LearnerRecord } from '../../../src/lib/wire';

const oneFoot = findLesson('one-foot', allLessons()) as Lesson;
const AT = '2030-05-01T08:00:00.000Z';
const kept = { marks: 100, passed: true, by: '1', model: null, isRegraded: false };

function reached(...stations: string[]): LearnerRecord {
  return stations.reduce(
    (record, station) =>
      applyChange(record, { kind: 'reached', lesson: oneFoot.id, station, at: AT }),
    emptyRecord()
  );
}

test('every lesson stands in one group in the order of the course, safety first and alone', () => {
  const groups = groupsOf(allLessons());
  expect(groups.flatMap(({ lessons }) => lessons)).toEqual(allLessons());
  expect(groups[0].lessons.map(({ id }) => id)).toEqual(['safety']);
});

test('lessons are numbered by their order wherever they are named, and safety has no number', () => {
  expect(allLessons().map(lessonNumber)).toEqual(
    allLessons().map((_, i) => (i === 0 ? '' : `Lesson ${i}`))
  );
});

test('a lesson is new, begun by a try alone, and done when all its tries were passed, not when it was only read', () => {
  expect(lessonMarks(oneFoot, emptyRecord())).toMatchObject({ state: 'new', at: '' });
  const tries = oneFoot.challenges.map(({ id }, i) => aTry(`t${i}`, { challenge: id, marks: 100 }));
  const [first] = tries;
  const one = lessonMarks(oneFoot, { ...emptyRecord(), tries: [first] });
  expect(one).toMatchObject({ state: 'begun', tries: ['passed', 'open', 'open', 'open'] });
  expect(marksText(one)).toBe('1 of 4 passed');

  const change = { kind: 'finished', lesson: oneFoot.id, station: 'field', at: AT } as const;
  const read = applyChange(emptyRecord(), change);
  expect(lessonMarks(oneFoot, read)).toMatchObject({
    state: 'begun',
    isThrough: false,
    at: 'field'
  });
  expect(marksText(lessonMarks(oneFoot, read))).toBe('begun');
  const failed = [...tries.slice(1), { ...first, marks: PASS_MARK - 1 }];
  const missed = lessonMarks(oneFoot, { ...read, tries: failed });
  expect(missed).toMatchObject({ state: 'begun', tries: ['missed', 'passed', 'passed', 'passed'] });
  expect(marksText(missed)).toBe('3 of 4 passed, 1 not passed yet');
  const unread = lessonMarks(oneFoot, { ...emptyRecord(), tries });
  expect([unread.state, marksText(unread)]).toEqual(['begun', '4 of 4 passed, end not read']);
  const all = lessonMarks(oneFoot, { ...read, tries });
  expect([all.state, marksText(all)]).toEqual(['done', 'done on screen']);
});

test('a try that was skipped ends a lesson and is no pass of it', () => {
  const [one, ...others] = oneFoot.challenges.map(({ id }) => id);
  const changes = [
    { kind: 'skipped', lesson: oneFoot.id, station: one, at: AT },
    { kind: 'finished', lesson: oneFoot.id, station: 'field', at: AT }
  ] as const;
  const record = changes.reduce(applyChange, emptyRecord());
  const tries = others.map((id, i) => aTry(`t${i}`, { challenge: id, marks: 100 }));
  const marks = lessonMarks(oneFoot, { ...record, tries });
  expect(marks).toMatchObject({ state: 'begun', isThrough: true, at: '' });
  expect(marksText(marks)).toBe('3 of 4 passed, 1 skipped');
});

test('of a half seen challenge a try in sight passes nothing: only one that was called does', () => {
  const ruler = findLesson('your-hands-ruler', allLessons()) as Lesson;
  const [half] = ruler.challenges;
  expect(half.visibility).toBe('half_seen');
  const seen = aTry('a', { challenge: half.id, marks: 100 });
  const called = { ...seen, id: 'b', guess_m: 0.3 };
  const standing = (...tries: (typeof seen)[]) =>
    lessonMarks(ruler, { ...emptyRecord(), tries }).tries[0];
  expect(standing(seen)).toBe('missed');
  expect(standing(called)).toBe('passed');
  expect(bestOf([{ stored: seen, kept }], ruler.challenges)).toEqual(new Map([[half.id, 0]]));
  expect(bestOf([{ stored: called, kept }], ruler.challenges)).toEqual(new Map([[half.id, 100]]));
});

test('every half seen challenge asks for a call, by which a try out of sight is known', () => {
  const half = allLessons()
    .flatMap(({ challenges }) => challenges)
    .filter(({ visibility }) => visibility === 'half_seen');
  expect(half.length).toBeGreaterThan(10);
  expect(half.filter((one) => !asksCall(one)).map(({ id }) => id)).toEqual([]);
});

test('a lesson is gone on with at the step where it was left, a try included', () => {
  const prediction = { lesson: oneFoot.id, station: 'predict', option: 'same', at: AT };
  const record = applyChange(reached('predict', 'see', 'exactly-two-feet'), {
    kind: 'predicted',
    prediction
  });
  expect(leftAt(oneFoot, record)).toBe('exactly-two-feet');
});

test('a try made after the last step that was gone on to is where a lesson was left', () => {
  const prediction = { lesson: oneFoot.id, station: 'predict', option: 'same', at: AT };
  const record = applyChange(reached('predict', 'see'), { kind: 'predicted', prediction });
  const made = (at: string) => [aTry('t', { challenge: 'exactly-two-feet', marks: 40, at })];
  const later = '2030-05-01T08:20:00.000Z';
  expect(leftAt(oneFoot, { ...record, tries: made(later) })).toBe('exactly-two-feet');
  expect(leftAt(oneFoot, { ...record, tries: made('2030-04-30T08:20:00.000Z') })).toBe('see');
});

test('a step that is not open any more, or a lesson that was not begun, is not gone to', () => {
  expect(leftAt(oneFoot, reached('predict', 'see'))).toBeNull();
  expect(leftAt(oneFoot, emptyRecord())).toBeNull();
});

test('a drag is drawn as a solid way along the bottom, a hop as dots above it', () => {
  const challenges = allLessons().flatMap((lesson) => lesson.challenges);
  const drawn = (id: string) => {
    const challenge = challenges.find((one) => one.id === id);
    if (!challenge) throw new Error(`no challenge ${id}`);
    return thumbOf(challenge);
  };
  expect(drawn('exactly-one-foot')).toMatchObject({
    flown: '',
    bait: { isTouching: true }
  });
  expect(drawn('one-hop').flown).toMatch(/^M.*L/);
});

test('a tab is named by what it holds', () => {
  expect(tabName('chunk-rock')).toBe('Chunk rock');
});
