import { expect, test } from 'vitest';
import { itemOf } from '../../src/lib/course/items';
import { faultsOf } from '../../src/lib/course/items/check-item';
import {
  saidInches,
  saidMeasured,
  saidToPick,
  saidToTheInch
} from '../../src/lib/course/items/said';
import { inUnits } from '../../src/lib/scoring';
import { tied } from '../tied';

const INCH_M = 0.0254;

test.each([
  [8, '8~in', '20~cm'],
  [12, '1~ft', '30~cm'],
  [14, '1~ft 2~in', '35~cm'],
  [18, '1½~ft', '45~cm'],
  [28, '2~ft 4~in', '70~cm']
])('what a sum is made of is said in feet from a foot on: %d inches', (inches, feet, metric) => {
  for (const said of [saidInches(inches), saidToTheInch(inches * INCH_M)]) {
    expect(inUnits(said, 'imperial')).toBe(tied(feet.replace(' ', '~')));
    expect(inUnits(said, 'metric')).toBe(tied(metric));
  }
  expect(inUnits(saidMeasured(inches * INCH_M), 'imperial')).toBe(tied(feet.replace(' ', '~')));
});

test('what one picks among is said alike, whatever it came to', () => {
  const said = [7, 11.7, 14, 28, 42].map((inches) => saidToPick(inches * INCH_M));
  expect(said.map((one) => inUnits(one, 'imperial'))).toEqual(
    ['7~in', '1~ft', '1¼~ft', '2¼~ft', '3½~ft'].map(tied)
  );
});

test('what the model makes of a sum stays exact in metric', () => {
  expect(inUnits(saidMeasured(0.6967), 'metric')).toBe(tied('70~cm'));
  expect(inUnits(saidMeasured(1.234), 'metric')).toBe(tied('1.23~m'));
});

test('a question that says more than two feet in inches has that fault', () => {
  const item = itemOf('safety-eyes', 1);
  const faulty = { ...item, explain: `${item.explain} That leaves {28 in|70 cm}.` };
  expect(faultsOf(faulty).join()).toContain('two feet or more in inches');
  expect(faultsOf(item)).toEqual([]);
});
