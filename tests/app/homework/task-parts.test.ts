import { describe, expect, test } from 'vitest';
import { MODEL_VERSION } from '../../../src/lib/model';
import {
  headline,
  heldIn,
  heldOf,
  isPartDone,
  nextAfter,
  partsOf,
  underWay
} from '../../../src/lib/app/homework/parts';
import { isAllSent, refusalsOf } from '../../../src/lib/app/homework/sent-entries';
import type { HomeworkEntry, TaskView } from '../../../src/lib/app/homework/homework-store';
import { evenHand, sampleChallenge, sampleTask } from '../../server/samples';

const told: TaskView = { ...sampleTask, tries: 2, questions: 1, isClosed: false, answer: '' };
const at = '2031-05-01T08:00:00.000Z';
type State = HomeworkEntry['state'];

const entry = (sent: HomeworkEntry['sent'], state: State, why?: string): HomeworkEntry => {
  return { share: 's', sent, state, why };
};
const lesson = (state: State = 'taken') =>
  entry({ kind: 'finished', id: 'f', lesson: 'one-foot', at }, state);
const tried = (state: State = 'taken', why?: string) => {
  const made = { input: evenHand(sampleChallenge, 9, 1), model: MODEL_VERSION, marks: 9 };
  return entry({ kind: 'try', id: 't', at, challenge: sampleChallenge.id, ...made }, state, why);
};
const answered = (state: State = 'taken') => {
  const made = { item: 'mood', seed: 1, given: 'a', report: 'knew', right: true } as const;
  return entry({ kind: 'answer', id: 'a', at, model: MODEL_VERSION, ...made }, state);
};
const all = [lesson(), tried(), tried(), answered()];

test('a part is done by as many as are asked, and a refused one is none of them', () => {
  const made = (entries: HomeworkEntry[]) =>
    partsOf(told, heldOf(entries)).map((one) => [one.made, one.of]);
  expect(made(all)).toEqual([
    [1, 1],
    [2, 2],
    [1, 1]
  ]);
  expect(made([tried('waiting'), tried('refused')])).toEqual([
    [0, 1],
    [1, 2],
    [0, 1]
  ]);
});

test('opened again it goes on with the part that was left in its midst', () => {
  const left = (entries: HomeworkEntry[]) => underWay(partsOf(told, heldOf(entries)))?.kind ?? null;
  expect(left([])).toBeNull();
  expect(left([lesson(), tried()])).toBe('challenge');
  expect(left([tried(), tried()])).toBeNull();
});

test('after a part comes the next that is not done, and after the last the first such', () => {
  const next = (entries: HomeworkEntry[], kind: 'lesson' | 'challenge' | 'questions', id: string) =>
    nextAfter(partsOf(told, heldOf(entries)), kind, id)?.kind ?? null;
  expect(next([], 'lesson', 'one-foot')).toBe('challenge');
  expect(next([tried(), tried()], 'lesson', 'one-foot')).toBe('questions');
  expect(next([tried(), tried(), answered()], 'questions', 'season')).toBe('lesson');
  expect(next(all, 'challenge', sampleChallenge.id)).toBeNull();
});

describe('the line at the top', () => {
  test('says nothing while there is something to do', () => {
    expect(headline(told, all.slice(1))).toBe('');
  });

  test('says done, and what has not gone out', () => {
    expect(headline(told, all)).toBe('Done. Your guide has it all.');
    expect(headline(told, [...all.slice(0, 3), answered('waiting')])).toBe(
      'Done. 1 not sent yet. Kept here until there’s a connection.'
    );
  });

  test('says closed to who is not done, and done to who is', () => {
    const closed = { ...told, isClosed: true };
    expect(headline(closed, [])).toMatch(/^Your guide closed this/);
    expect(headline(closed, [...all.slice(0, 3), answered('refused')])).toMatch(
      /^Your guide closed this/
    );
    expect(headline(closed, all)).toMatch(/^Done/);
  });
});

test('nobody is told “all sent” beside a refusal, and each reason is said once', () => {
  expect(isAllSent([])).toBe(false);
  expect(isAllSent(all)).toBe(true);
  expect(isAllSent([...all, tried('waiting')])).toBe(false);
  const refused = [...all, tried('refused', 'Closed.'), tried('refused', 'Closed.')];
  expect(isAllSent(refused)).toBe(false);
  expect(refusalsOf([...refused, tried('refused', 'Full.')])).toEqual([
    '2 were not taken: Closed.',
    '1 was not taken: Full.'
  ]);
});

test('homework by link is done when its lessons, too, were gone through', () => {
  const { input } = tried().sent as { input: ReturnType<typeof evenHand> };
  const made = { challenge: 0, at, input };
  const { item, seed, given, report } = {
    item: 'mood',
    seed: 1,
    given: 'a',
    report: 'knew' as const
  };
  const result = {
    ...{ assignment: told, by: '', model: MODEL_VERSION, tries: [made, made] },
    answers: [{ item, seed, given, report, at }]
  };
  const done = (through: string[]) => partsOf(told, heldIn(result, through)).map(isPartDone);
  expect(done([])).toEqual([false, true, true]);
  expect(done(['one-foot'])).toEqual([true, true, true]);
});
