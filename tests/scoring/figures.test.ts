import { describe, expect, test } from 'vitest';
import { findChallenge, loadLessons } from '../../src/lib/course';
import {
  askedRangeText,
  figureOf,
  figureTicks,
  formatFigure,
  gradeTry,
  figureSide,
  type Challenge
} from '../../src/lib/scoring';
import { tied } from '../tied';

const lessons = loadLessons();
const all = lessons.flatMap(({ challenges }) => challenges);

test('every task’s reference move is as asked in the task’s own figure', () => {
  const off = all.flatMap((challenge) => {
    const figure = figureOf(challenge);
    const { grade } = gradeTry(challenge, challenge.reference);
    const isIn = grade.figure !== null && figureSide(figure, grade.figure) === 0;
    return isIn ? [] : [[challenge.id, figure.name, grade.figure]];
  });
  expect(off).toEqual([]);
});

describe('of what a task is', () => {
  test.each([
    ['one-hop', 'm', 'hops'],
    ['count-it-down', 's', 'bottom_first'],
    ['swim-at-a-height', 'm/s', 'swim'],
    ['three-stones-unseen', 'm', 'travel'],
    ['dead-stick', 's', 'rests'],
    ['shake-in-place', 'count', 'twitches'],
    ['free-a-snag', 'marks', undefined]
  ])('%s counts in %s', (id, unit, kind) => {
    const { goal, ...figure } = figureOf(findChallenge(id, lessons) as Challenge);
    expect([figure.unit, goal?.kind]).toEqual([unit, kind]);
  });
});

test.each([
  ['m', 0.3048, '1~ft', '30~cm'],
  ['s', -1.25, '−1.3~s', '−1.3~s'],
  ['m/s', 0.3048, '1~ft/s', '0.3~m/s'],
  ['share', 0.75, '75%', '75%'],
  ['count', 3, '3', '3'],
  ['marks', 82, '82~marks', '82~marks']
] as const)('%s is written as a reader knows it', (unit, value, imperial, metric) => {
  expect(formatFigure({ unit }, value, 'imperial')).toBe(tied(imperial));
  expect(formatFigure({ unit }, value, 'metric')).toBe(tied(metric));
});

test('an open range says where it begins, and one value itself', () => {
  expect(askedRangeText({ unit: 's', asked: [12, null] }, 'metric')).toBe(tied('12~s or more'));
  expect(askedRangeText({ unit: 'count', asked: [3, 3] }, 'metric')).toBe('3');
  expect(askedRangeText({ unit: 'm/s', asked: null }, 'metric')).toBe('');
});

test('ticks begin where the axis does, on both sides of nothing', () => {
  const labels = figureTicks({ unit: 's' }, [-1.2, 4], 'metric', 6).map(({ label }) => label);
  expect(labels).toEqual(['−1~s', '0', '1~s', '2~s', '3~s', '4~s'].map(tied));
});
