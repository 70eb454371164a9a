import { expect, test } from 'vitest';
import { formatWay } from '../../src/lib/scoring/display';
import { tied } from '../tied';

test('a way that rounds to a limit it lies outside is told finer, where that lies outside as told', () => {
  const limits = [0.2548, 0.3548] as const;
  const told = (m: number) => [formatWay(m, limits, 'imperial'), formatWay(m, limits, 'metric')];
  expect(told(0.3)).toEqual([tied('1~ft'), tied('30~cm')]);
  expect(told(0.3555)).toEqual([tied('just over 1~ft~2~in'), tied('36~cm')]);
  expect(told(0.362)).toEqual([tied('1~ft~2¼~in'), tied('36~cm')]);
  expect(told(0.4)).toEqual([tied('1~ft~4~in'), tied('40~cm')]);
});

test('what rounding leaves makes no way finer', () => {
  expect(formatWay(0.692, [0.55, 0.6896], 'metric')).toBe(tied('just over 69~cm'));
  expect(formatWay(0.6935, [0.55, 0.6896], 'metric')).toBe(tied('69.5~cm'));
});
