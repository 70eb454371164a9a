import { createEmptyCard, fsrs, FSRS, generatorParameters, Rating, type Grade } from 'ts-fsrs';
import { describe, expect, test } from 'vitest';
import { dayNumberOf, gradeOf, memoriesOf, recall } from '../../../src/lib/practice';
import { anAnswer } from '../samples';

/**
 * Vectors: open-spaced-repetition/ts-fsrs, packages/fsrs/__tests__/FSRS-6.test.ts, and in turn fsrs-rs,
 * src/inference.rs. They are for weights that are the library's defaults.
 */
const { Again, Hard, Good } = Rating;
const PUBLISHED: Grade[] = [Again, Good, Good, Good, Good, Good];
const PUBLISHED_GAPS = [0, 0, 1, 3, 8, 21];

describe('the scheduler', () => {
  test('keeps the intervals that its authors publish', () => {
    const f = fsrs();
    let card = createEmptyCard(new Date(2022, 11, 29, 12, 30));
    let now = new Date(2022, 11, 29, 12, 30);
    const ratings = [...Array(6).fill(Good), Again, Again, ...Array(5).fill(Good)] as Grade[];
    const intervals = ratings.map((rating) => {
      card = f.next(card, now, rating).card;
      now = card.due;
      return card.scheduled_days;
    });
    expect(intervals).toEqual([0, 2, 11, 46, 163, 498, 0, 0, 2, 4, 7, 12, 21]);
  });

  test('without steps of minutes reaches the memory state that its authors publish', () => {
    const f = new FSRS(generatorParameters({ enable_short_term: false }));
    const state = PUBLISHED.reduce(
      (before, grade, i) => f.next_state(before, PUBLISHED_GAPS[i], grade),
      null as ReturnType<typeof f.next_state> | null
    );
    expect(state?.stability).toBeCloseTo(53.335106, 4);
    expect(state?.difficulty).toBeCloseTo(6.3574867, 4);
  });
});

describe('what is remembered', () => {
  test('comes to that same published state from answers in the record, in any order', () => {
    let day = 1;
    const answers = PUBLISHED.map((grade, i) => {
      day += PUBLISHED_GAPS[i];
      const at = new Date(Date.UTC(2030, 0, day, 8, i)).toISOString();
      return anAnswer(`a${i}`, { at, right: grade !== Again, report: 'knew' });
    });
    const memory = memoriesOf([...answers].reverse(), dayNumberOf).get('mark-drag');
    expect(memory?.state.stability).toBeCloseTo(53.335106, 4);
    expect(memory?.state.difficulty).toBeCloseTo(6.3574867, 4);
    expect(memory?.answers).toBe(6);
  });

  test('is nine tenths sure on the day it is due', () => {
    const memory = memoriesOf([anAnswer('a', { report: 'knew' })], dayNumberOf).get('mark-drag');
    if (!memory) throw new Error('not remembered');
    expect(memory.due_day - memory.last_day).toBe(2);
    // Intervals are whole days: a stability of 2.31 is asked for after 2.
    expect(recall(memory, memory.due_day)).toBeGreaterThan(0.9);
    expect(recall(memory, memory.due_day + 1)).toBeLessThan(0.9);
  });

  test('counts days through months and leap years', () => {
    for (const at of ['1970-01-01', '2028-02-29', '2030-12-31', '2100-03-01']) {
      expect(dayNumberOf(`${at}T23:59:00.000Z`)).toBe(Date.parse(at) / 86_400_000);
    }
  });
});

test.each([
  [true, 'knew', Good],
  [true, 'worked out', Hard],
  [true, 'guessed', Again],
  [false, 'knew', Again],
  [false, 'worked out', Again],
  [false, 'guessed', Again]
] as const)('right: %s, %s is graded %s', (right, report, grade) => {
  expect(gradeOf({ right, report })).toBe(grade);
});
