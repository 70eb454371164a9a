import { expect, test } from 'vitest';
import { diameterFor, lineName, namedLine, LINES } from '../../src/lib/sandbox/gear';
import { formatWind } from '../../src/lib/scoring';
import { tied } from '../tied';

test('a line of the table has its own name', () => {
  for (const line of LINES) expect(namedLine(line)).toEqual(line);
});

test.each([
  ['fluorocarbon', 15],
  ['nylon', 14],
  ['braid', 65]
] as const)('%s of a strength between the table’s is called by it: %d lb', (material, lb) => {
  const line = namedLine({ material, diameter_m: diameterFor(material, lb) });
  expect(lineName(line, 'imperial')).toContain(tied(`${lb}~lb`));
});

test('wind is miles an hour to an American, whole ones from ten on', () => {
  expect(formatWind(4, 'imperial')).toBe(tied('8.9~mph'));
  expect(formatWind(5.8, 'imperial')).toBe(tied('13~mph'));
  expect(formatWind(4, 'metric')).toBe(tied('4~m/s'));
});
