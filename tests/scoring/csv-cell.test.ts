import { expect, test } from 'vitest';
import { csvCell } from '../../src/lib/scoring';

test.each([
  ['=1+1', "'=1+1"],
  ['@cmd', "'@cmd"],
  ['-x', "'-x"],
  ['a,"b"', '"a,""b"""'],
  [-0.25, '-0.25'],
  [undefined, '']
])('%j is written as %s', (value, written) => {
  expect(csvCell(value)).toBe(written);
});

test('numbers are rounded to as many decimals as are asked for', () => {
  expect([csvCell(1.23456789), csvCell(1.23456789, 6), csvCell(-1e-9)]).toEqual([
    '1.2346',
    '1.234568',
    '0'
  ]);
});
