import { describe, expect, test } from 'vitest';
import { findChallenge, isBlank, loadLessons, nthTry, taskIdOf } from '../../src/lib/course';
import { lazyRun } from '../../src/lib/course/lazy';
import {
  gradeTry,
  parseChallenge,
  PASS_MARK,
  REFERENCE_MARK,
  type Challenge
} from '../../src/lib/scoring';

const lessons = loadLessons();
const tap = findChallenge('strike-a-tap', lessons) as Challenge;
const tries = Array.from({ length: 40 }, (_, n) => nthTry(tap, n + 1));

describe('a challenge with bites', () => {
  test('bites at another time in each try, and not at all in some', () => {
    const times = tries.flatMap(({ setup }) => setup.bites?.map(({ t_s }) => t_s) ?? []);
    const blanks = tries.length - times.length;
    // A quarter of 40 is 10; 3 to 19 are three standard deviations.
    expect(blanks).toBeGreaterThanOrEqual(3);
    expect(blanks).toBeLessThanOrEqual(19);
    expect(new Set(times).size).toBeGreaterThan(20);
    expect(Math.min(...times)).toBeGreaterThanOrEqual(3.5);
    expect(Math.max(...times)).toBeLessThanOrEqual(9);
  });

  test('is found again by the id of a try, the same and sound', () => {
    const [first] = tries;
    expect(findChallenge(first.id, lessons)).toEqual(first);
    expect(taskIdOf(first.id)).toBe(tap.id);
    expect(() => parseChallenge(JSON.parse(JSON.stringify(first)))).not.toThrow();
  });

  test('is met by a hand that answers the bite, and by one that lets a blank try be', () => {
    const blank = tries.find(({ setup }) => setup.bites?.length === 0) as Challenge;
    for (const one of [tries[0], blank]) {
      expect(gradeTry(one, one.reference).grade.marks).toBeGreaterThanOrEqual(REFERENCE_MARK);
    }
    expect(gradeTry(blank, tap.reference).grade.passed).toBe(false);
  });
});

test('no cast without a bite is passed by a rod that never moves', () => {
  const blanks = lessons
    .flatMap(({ challenges }) => challenges)
    .filter(({ bite_between_s, goals }) => bite_between_s && goals.every(isDoneWithout))
    .map((one) => [1, 2, 3, 4, 5, 6, 7].map((n) => nthTry(one, n)).find(isBlank));
  expect(blanks.length).toBeGreaterThanOrEqual(4);
  for (const blank of blanks) {
    if (!blank) throw new Error('none of the first seven casts is blank');
    expect(gradeTry(blank, lazyRun('still', blank)).grade.marks).toBeLessThan(PASS_MARK);
  }
});

test('a drop is met by the set where something takes it, and by the rod that goes down where nothing does', () => {
  const drop = findChallenge('taken-on-the-drop', lessons) as Challenge;
  const all = [1, 2, 3, 4, 5, 6, 7].map((n) => nthTry(drop, n));
  for (const one of all) {
    const { grade } = gradeTry(one, one.reference);
    expect(grade.marks).toBeGreaterThanOrEqual(REFERENCE_MARK);
    const other = all.find((another) => isBlank(another) !== isBlank(one)) as Challenge;
    expect(gradeTry(one, other.reference).grade.passed).toBe(false);
  }
  const [taken] = all.filter((one) => !isBlank(one));
  const [, wait] = gradeTry(taken, taken.reference).grade.goals;
  expect([wait.goal.kind, wait.value]).toEqual(['bottom_first', NaN]);
});

/** What of a goal could not be done without a bite. */
const isDoneWithout = ({ kind }: { kind: string }) => kind !== 'travel' && kind !== 'came_tight';

describe('where a sweep on a tight line is asked after the bite', () => {
  const reelDown = findChallenge('reel-down-and-sweep', lessons) as Challenge;
  const all = Array.from({ length: 20 }, (_, n) => nthTry(reelDown, n + 1));

  test('there is a bite in each try: without one the distance could not be gone', () => {
    expect(all.filter(({ setup }) => setup.bites?.length !== 1)).toEqual([]);
  });

  test('who answers the bite passes each try, and who counts the seconds does not', () => {
    const marksOf = (one: Challenge, move = one.reference) => gradeTry(one, move).grade.marks;
    // Some tries suffice: each is a run of its own.
    const some = all.slice(0, 6);
    for (const one of some) expect(marksOf(one), one.id).toBeGreaterThanOrEqual(REFERENCE_MARK);
    const passed = some.filter((one) => gradeTry(one, reelDown.reference).grade.passed);
    expect(passed.length).toBeLessThan(some.length);
  });
});

test('no challenge bites at a time that can be counted', () => {
  const fixed = lessons
    .flatMap(({ challenges }) => challenges)
    .filter(({ setup, bite_between_s }) => setup.bites?.length && !bite_between_s);
  expect(fixed.map(({ id }) => id)).toEqual([]);
});

test('a challenge without bites is the same at every try', () => {
  const drag = findChallenge('exactly-one-foot', lessons) as Challenge;
  expect(nthTry(drag, 5)).toBe(drag);
  expect(findChallenge('exactly-one-foot-try-5', lessons)).toBeUndefined();
});
