import { describe, expect, test } from 'vitest';
import { logCsv, logText, readLog, withoutPlaces } from '../../src/lib/wire';
import { anEntry } from '../practice/samples';

const stamp = { id: () => 'fresh-id-of-a-row-1', at: '2030-06-01T00:00:00.000Z' };
const look = {
  move: { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.5 } as const,
  out_m: 11.9,
  travel_m: 0.42,
  peak_height_m: 0.13
};
const entries = [
  anEntry('entry-of-one-morning', { drops_s: [11.5, 12.1], looks: [look], temperature_C: 13.5 }),
  anEntry('entry-of-that-evening', { place: '=cmd|A1', felt: [], note: 'wind, then rain' })
];

describe('a log', () => {
  test('goes out as JSON and comes in again whole', () => {
    expect(readLog(logText(entries), stamp)).toEqual({ entries, faults: [] });
  });

  test('goes out as a table and comes in again but for what the camera showed', () => {
    const { entries: read, faults } = readLog(logCsv(entries), stamp);
    expect(faults).toEqual([]);
    expect(read).toEqual(entries.map((one) => ({ ...one, looks: [] })));
  });

  test('holds no cell that a spreadsheet would run', () => {
    const cell = logCsv(entries).split('\r\n')[2].split(',')[3];
    expect(cell).toBe("'=cmd|A1");
  });

  test('leaves its places behind where that is asked', () => {
    expect(logText(withoutPlaces(entries))).not.toContain('North hump');
    expect(logCsv(withoutPlaces(entries))).not.toContain('cmd');
  });

  test('of one’s own making needs no id, and takes what was not said as nothing', () => {
    const table =
      'on,jig,mass_kg,depth_m,ground,retrieve,casts\n2030-05-03,Half,0.0142,4,sand,hop,12';
    expect(readLog(table, stamp).entries).toMatchObject([
      { id: 'fresh-id-of-a-row-1', at: stamp.at, bites: 0, felt: [], drops_s: [], place: '' }
    ]);
  });

  test.each([
    ['on,jig\n2030-05-03,Half', 0, 'The column mass_kg is missing.'],
    ['on,lure\n2030-05-03,Half', 0, 'No column is called “lure”.'],
    ['{"format":"feltfoot-record"}', 0, 'This isn’t a log. Choose one saved here.'],
    ['{', 0, 'This isn’t a log. Choose one saved here.'],
    [
      'on,jig,mass_kg,depth_m,ground,retrieve,casts\n2030-05-03,Half,0.0142,deep,sand,hop,12',
      1,
      /^depth_m: /
    ],
    [
      'on,jig,mass_kg,depth_m,ground,retrieve,casts,bites\n2030-05-03,Half,0.0142,4,sand,hop,2,3',
      1,
      /^bites must be from as many casts/
    ]
  ])('is refused with row and reason: %s', (text, row, says) => {
    const { faults } = readLog(text, stamp);
    expect(faults).toContainEqual({
      row,
      says: typeof says === 'string' ? says : expect.stringMatching(says)
    });
  });
});
