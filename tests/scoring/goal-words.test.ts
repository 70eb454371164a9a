import { expect, test } from 'vitest';
import { wordsOf, type Goal } from '../../src/lib/scoring';
import { tied } from '../tied';

const cases: [Goal, number, string, string][] = [
  [
    { kind: 'travel', target_m: 0.3048, band_m: 0.0508 },
    0.4064,
    'Travel 10~in to 1~ft~2~in: 1~ft~4~in',
    'Travel 25~cm to 36~cm: 41~cm'
  ],
  [
    { kind: 'peak_height', most_m: 0.0508 },
    0.127,
    'Height at most 2~in off the bottom: 5~in',
    'Height at most 5~cm off the bottom: 13~cm'
  ],
  [
    { kind: 'contact', least: 0.95 },
    0.62,
    'On the bottom at least 95% of the time it moved: 62%',
    'On the bottom at least 95% of the time it moved: 62%'
  ],
  [
    { kind: 'speed', most_m_s: 0.24 },
    0.6096,
    'Top speed no faster than 1~ft in 1.3~s: 1~ft in 0.5~s',
    'Top speed no faster than 30~cm in 1.3~s: 30~cm in 0.5~s'
  ],
  [
    { kind: 'speed', most_m_s: 0.3 },
    0.304,
    'Top speed no faster than 1~ft in 1~s: just over 1~ft in 1~s',
    'Top speed no faster than 30~cm in 1~s: just over 30~cm in 1~s'
  ],
  [
    { kind: 'hops', count: 3, height_m: [0.1016, 0.2032] },
    2,
    'Hops 3, 4~in to 8~in high: 2',
    'Hops 3, 10~cm to 20~cm high: 2'
  ],
  // Outside its limit, and rounds to it: said to be outside.
  [
    { kind: 'travel', target_m: 0.3048, band_m: 0.0508 },
    0.358,
    'Travel 10~in to 1~ft~2~in: just over 1~ft~2~in',
    'Travel 25~cm to 36~cm: just over 36~cm'
  ],
  [
    { kind: 'contact', least: 0.9 },
    0.897,
    'On the bottom at least 90% of the time it moved: just under 90%',
    'On the bottom at least 90% of the time it moved: just under 90%'
  ],
  [
    { kind: 'bottom_first', within_s: 2.5 },
    Infinity,
    'Wait for the bottom lowered within 2.5~s of the touch, not before: never moved',
    'Wait for the bottom lowered within 2.5~s of the touch, not before: never moved'
  ],
  [{ kind: 'stones', touched: [0, 1, 4] }, 2, 'Rocks touched 3: 2', 'Rocks touched 3: 2']
];

test.each(cases)('a goal of %j is said in the learner’s units', (goal, value, ft, cm) => {
  const said = (units: 'imperial' | 'metric') => {
    const { name, asked, reached } = wordsOf(goal, value, units);
    return `${name} ${asked}: ${reached}`;
  };
  expect(said('imperial')).toBe(tied(ft));
  expect(said('metric')).toBe(tied(cm));
});

test('a count that ended in a lift is not told as what was asked', () => {
  const reached = (value: number, met: number) =>
    wordsOf({ kind: 'bottom_first', within_s: 2.5 }, value, 'imperial', met).reached;
  expect(reached(1.6, 1)).toBe(tied('1.6~s after'));
  expect(reached(1.6, 0.5)).toBe(tied('raised 1.6~s after'));
});

test('hops of the right number and the wrong height are not told as what was asked', () => {
  const reached = (count: number, met: number) =>
    wordsOf({ kind: 'hops', count, height_m: [0.1, 0.2] }, count, 'imperial', met).reached;
  expect(reached(1, 0.9)).toBe('1, not the right height');
  expect(reached(3, 0.9)).toBe('3, not all the right height');
  expect(reached(3, 1)).toBe('3');
});
