import { expect, test } from 'vitest';
import {
  typedLength_m,
  typedNumber,
  typedTemperature_C,
  typedWeight_kg
} from '../../src/lib/scoring';

test.each([
  ['7 ft 2 in', 7 * 0.3048 + 2 * 0.0254],
  ['7\'2"', 7 * 0.3048 + 2 * 0.0254],
  ['7′ 2½″', 7 * 0.3048 + 2.5 * 0.0254],
  ['14', 14 * 0.0254],
  ['1 1/4', 1.25 * 0.0254],
  ['1 foot', 0.3048],
  ['35cm', 0.35],
  ['1,2 m', 1.2],
  ['.5 in', 0.0127],
  ['−3 in', -3 * 0.0254]
])('the length %s in a field of inches is %f m', (text, metres) => {
  expect(typedLength_m(text, 'in')).toBeCloseTo(metres, 12);
});

test.each(['', 'a foot', '7 lb', '2 in 7 ft', '3 in 4 in', '1/0', '--3', '1 ft -2 in'])(
  'no length is read into %j',
  (text) => expect(typedLength_m(text, 'in')).toBeNull()
);

test('weights, numbers and temperatures are read in their own units', () => {
  expect(typedWeight_kg('5/8', 'oz')).toBeCloseTo(0.625 * 0.028349523125, 12);
  expect(typedWeight_kg('18 g', 'oz')).toBeCloseTo(0.018, 12);
  expect(typedNumber('2 1/2')).toBe(2.5);
  expect(typedNumber('2 ft')).toBeNull();
  expect(typedTemperature_C('59', 'F')).toBeCloseTo(15, 9);
  expect(typedTemperature_C('15 °C', 'F')).toBe(15);
  expect(typedTemperature_C('warm', 'F')).toBeNull();
});
