import { expect, test } from 'vitest';
import { triesCsv } from '../../src/lib/practice';
import { cell } from '../../src/lib/practice/tries-csv';
import { aMark } from './marks';

test('tries are a row each, in SI, under their names', () => {
  const [head, row, end] = triesCsv([aMark(3, 1.5, { guess_m: 0.41 })]).split('\r\n');
  expect(head).toBe('challenge,at,meant_m,bait_m,tip_m,lift_m,speed_m_s,guess_m');
  expect(row).toBe('reed-bay-drag,2030-05-01T08:03:00.000Z,0.3048,0.4572,0.4481,0,0.21,0.41');
  expect(end).toBe('');
});

test.each([
  ['=1+1', "'=1+1"],
  ['@cmd', "'@cmd"],
  ['-x', "'-x"],
  ['a,"b"', '"a,""b"""'],
  [-0.25, '-0.25'],
  [undefined, '']
])('%j is written as %s', (value, written) => {
  expect(cell(value)).toBe(written);
});
