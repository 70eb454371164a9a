import { expect, test } from 'vitest';
import { isToldApart, logGroups } from '../../src/lib/practice';
import type { LogEntry } from '../../src/lib/wire';
import { anEntry } from './samples';

const spell = (n: number, more: Partial<LogEntry>) =>
  anEntry(`entry-of-one-morning-${n}`, { bites: 0, fish: 0, ...more });
const season = [
  spell(1, { retrieve: 'drag', bites: 2, fish: 1, on: '2030-05-01', felt: ['tap', 'bottom'] }),
  spell(2, { retrieve: 'drag', bites: 1, on: '2030-05-01', casts: 8, felt: ['mush'] }),
  spell(3, { retrieve: 'hop', on: '2030-05-02', depth_m: 3.1, felt: ['nothing'] }),
  spell(4, { retrieve: 'drag', on: '2030-05-02', place: '', felt: [] })
];

test('a season is sorted by what its spells have in common, the most bitten first', () => {
  const [drag, hop] = logGroups(season, 'retrieve');
  expect(drag).toMatchObject({ key: 'drag', spells: 3, days: 2, casts: 28, bites: 3, fish: 1 });
  expect(drag.bitten).toMatchObject({ hits: 2, of: 3 });
  expect(hop).toMatchObject({ key: 'hop', spells: 1, casts: 10 });
  expect(hop.bitten).toMatchObject({ hits: 0, of: 1 });
});

test('depths go in bands, a spell counts under each sign it felt, one without a place under none', () => {
  expect(logGroups(season, 'depth').map(({ spells }) => spells)).toEqual([3, 1]);
  expect(
    logGroups(season, 'felt')
      .map(({ key }) => key)
      .sort()
  ).toEqual(['bottom', 'mush', 'nothing', 'tap']);
  expect(logGroups(season, 'place')).toMatchObject([{ key: 'North hump', spells: 3 }]);
});

test('four spells tell nothing apart; forty of which one kind alone was bitten do', () => {
  expect(isToldApart(logGroups(season, 'retrieve'))).toBe(false);
  const many = Array.from({ length: 40 }, (_, i) =>
    spell(i, i % 2 === 0 ? { retrieve: 'hop', bites: 1 } : { retrieve: 'drag' })
  );
  expect(isToldApart(logGroups(many, 'retrieve'))).toBe(true);
});
