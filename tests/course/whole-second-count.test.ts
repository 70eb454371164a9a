import { describe, expect, test } from 'vitest';
import { challengesOf, loadLessons } from '../../src/lib/course';
import { held, inTurn, lift, pause } from '../../src/lib/course/retrieves/moves';
import {
  canBeCalled,
  describeTry,
  gradeTry,
  PASS_MARK,
  type Challenge
} from '../../src/lib/scoring';
import { sampled } from '../samples';

const lessons = loadLessons().flatMap(({ challenges }) => challenges);
const drilled = challengesOf({ drill: 'count', phase: 'unseen', seed: 4 }).slice(0, 6);
const isCount = ({ goals: [goal] }: Challenge) => goal.kind === 'bottom_first';
const counts = [...lessons.filter(isCount), ...sampled(drilled.filter(isCount), 2)];

/** The rod is lowered so long after the cast. */
function lowered(challenge: Challenge, at_s: number) {
  const made = gradeTry(challenge, inTurn(held(45), pause(at_s - 0.1), lift(45, 20, 1)));
  const [{ value }] = made.grade.goals;
  const { did, why, change } = describeTry(challenge, made, 'imperial', null);
  return { ...made, value, marks: made.grade.marks, words: `${did} ${why} ${change}` };
}

function touchOf(challenge: Challenge): number {
  const { events } = gradeTry(challenge, challenge.reference).result;
  return events.find(({ kind }) => kind === 'bottom')?.t_s ?? NaN;
}

const told = (some: readonly Challenge[]) => some.map((count) => [count.id, count] as const);

describe.each(told(counts))('%s', (_, count) => {
  test('is passed by who counts to the whole second nearest the touch, whose call is not held against it', () => {
    const { marks, result, value } = lowered(count, Math.round(touchOf(count)));
    expect(marks).toBeGreaterThanOrEqual(PASS_MARK);
    expect(value < 0 && canBeCalled('down', result)).toBe(false);
  });
});

// One grader marks them all: the first, the last and one between stand for the others.
describe.each(told(sampled(counts, 3)))('%s', (_, count) => {
  test('marks fall evenly from the touch on back, and a hair early is no "0 s before"', () => {
    const touch_s = touchOf(count);
    const tries = Array.from({ length: 16 }, (_, i) => lowered(count, touch_s + 0.2 - i / 10));
    for (const [i, { marks, value, words }] of tries.entries()) {
      expect(words).not.toMatch(/\b0\ss\b/);
      if (i > 0) expect(tries[i - 1].marks - marks).toBeLessThanOrEqual(8);
      if (value < 0) expect(marks).toBeLessThan(100);
      if (value < -1) expect(marks).toBeLessThan(PASS_MARK);
    }
  });
});

test('a count that was short is told when it was down, and that the count to make is a safe one', () => {
  const deep = counts.find(({ id }) => id === 'offshore-count');
  if (!deep) throw new Error('no such challenge');
  expect(lowered(deep, 12.5).words.replaceAll('\u00a0', ' ')).toBe(
    'You moved the rod 0.7 s before it was down. It was down after 13.3 s. Wait until the line stops running out: count to 15, to be sure.'
  );
  expect(lowered(deep, 13.1).words).toMatch(/^You moved the rod just before it was down\. /);
  // Over before it was down: how much too early is not known, and not told.
  const ended = lowered(deep, 6);
  expect(ended.marks).toBe(0);
  expect(ended.words).toMatch(/^You moved the rod while it was still falling\. /);
  expect(ended.words).not.toMatch(/before it was down/);
});
