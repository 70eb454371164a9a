import { expect, test } from 'vitest';
import { csvCell, csvTable } from '../../src/lib/wire/csv';

test.each([
  ['=1+1', "'=1+1"],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['-2+3', "'-2+3"],
  ['+49', "'+49"],
  ['\t=1', "'\t=1"],
  ['＝1+1', "'＝1+1"],
  ['－2', "'－2"],
  ['=HYPERLINK("x")', `"'=HYPERLINK(""x"")"`],
  ['a,"b"', '"a,""b"""'],
  ['Ina of the reed', 'Ina of the reed'],
  [-0.25, '-0.25'],
  [true, 'true'],
  [null, ''],
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

test('a table has its columns in their order, and an empty cell where a row has nothing', () => {
  const rows = [{ b: 2, a: 'one' }, { b: 3 }];
  expect(csvTable(['a', 'b'], rows)).toBe('a,b\r\none,2\r\n,3\r\n');
});
