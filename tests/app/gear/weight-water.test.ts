import { expect, test } from 'vitest';
import { FIRST_WATER, waterAfter, waterWords } from '../../../src/lib/app/gear/weight-water';

test('another water is of another depth, and each comes once before one comes again', () => {
  const met = [FIRST_WATER];
  for (let i = 1; i < 12; i++) met.push(waterAfter(met[i - 1]));
  expect(new Set(met.map((one) => JSON.stringify(one))).size).toBe(12);
  expect(waterAfter(met[11])).toEqual(FIRST_WATER);
  for (const [i, { feet }] of met.slice(1).entries()) expect(feet).not.toBe(met[i].feet);
});

test('a water is told before it is asked what to tie on', () => {
  expect(waterWords(FIRST_WATER, 'imperial').replaceAll('\u00a0', ' ')).toBe('20 ft, calm, sand');
});
