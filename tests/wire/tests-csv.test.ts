import { describe, expect, test } from 'vitest';
import { readTestsCsv, testsCsv, type StoredTest } from '../../src/lib/wire';

const tests: StoredTest[] = [
  {
    move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 5 },
    start: { slack_m: 0.1 },
    travel_m: 1.2,
    travel_sd_m: 0.05,
    peak_height_m: 0,
    height_sd_m: 0.02,
    note: 'wind, "gusts"'
  },
  { move: { kind: 'lift', from_deg: 0, to_deg: 20, duration_s: 0.3 }, travel_m: -0.2, note: '=1+1' }
];

describe('a table of tests', () => {
  test('is written and read again', () => {
    expect(readTestsCsv(testsCsv(tests))).toEqual({ tests, faults: [] });
  });

  test('may be in feet and inches, in hours, with tabs, and with columns left out', () => {
    const text =
      'kind\tfrom_deg\tto_deg\tduration s\ttravel_in\nlift\t9:00\t10:30\t1.5\t1 ft 2 in\n';
    expect(readTestsCsv(text)).toEqual({
      tests: [
        {
          move: { kind: 'lift', from_deg: 0, to_deg: 45, duration_s: 1.5 },
          travel_m: 0.3048 + 2 * 0.0254,
          note: ''
        }
      ],
      faults: []
    });
  });

  test('with decimal commas has semicolons between', () => {
    const { tests: read } = readTestsCsv(
      'from_deg;to_deg;duration_s;travel_m\r\n0;30;1,5;0,42\r\n'
    );
    expect(read[0]).toMatchObject({ travel_m: 0.42, move: { duration_s: 1.5 } });
  });

  test('names each row that cannot be read, with the reason', () => {
    const { faults } = readTestsCsv(
      'move,from_deg,to_deg,duration_s,travel_m\nsweep,0,60,3,1\nhop,0,60,3,1\nlift,0,,3,1\nlift,0,60,3,far\n'
    );
    expect(faults.map(({ row }) => row)).toEqual([2, 3, 4]);
    expect(faults[0].says).toContain('hop');
    expect(faults[1].says).toContain('to_deg');
    expect(faults[2].says).toContain('far');
  });

  test.each([
    ['', 'from_deg is missing'],
    ['from_deg,to_deg,duration_s', 'no rows'],
    ['from_deg,to_deg,duration_s,speed\n0,1,1,1', '“speed”']
  ])('%j is refused whole', (text, says) => {
    const { tests: read, faults } = readTestsCsv(text);
    expect(read).toEqual([]);
    expect(faults.map((one) => one.says).join(' ')).toContain(says);
  });
});
