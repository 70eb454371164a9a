import { expect, test } from 'vitest';
import { triesCsv } from '../../src/lib/practice';
import { aMark } from './marks';

test('tries are a row each, in SI, under their names', () => {
  const [head, row, end] = triesCsv([aMark(3, 1.5, { guess_m: 0.41 })]).split('\r\n');
  expect(head).toBe('challenge,at,meant_m,bait_m,tip_m,lift_m,speed_m_s,guess_m');
  expect(row).toBe('reed-bay-drag,2030-05-01T08:03:00.000Z,0.3048,0.4572,0.4481,0,0.21,0.41');
  expect(end).toBe('');
});
