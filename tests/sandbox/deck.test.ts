import { describe, expect, test } from 'vitest';
import { eyeOf, gazeOf, onRod, seen } from '../../src/lib/sandbox/eye';
import { DeckGrip, PX_PER_M } from '../../src/lib/sandbox/grip';
import { readTravel } from '../../src/lib/sandbox/guess';
import { tied } from '../tied';
import { smallWater } from './waters';

const setup = smallWater();
const LEVEL = { elevation_deg: 0, azimuth_deg: 0 };
const SWEPT = { elevation_deg: 0, azimuth_deg: 60 };
const eye = eyeOf(setup, 800, 500, gazeOf('lift', LEVEL));
const tipAt = (elevation_deg: number, azimuth_deg: number) =>
  seen(eye, onRod(setup, { elevation_deg, azimuth_deg }, 1));

describe('from the deck', () => {
  test('far things lie nearer to the horizon and to the middle', () => {
    const near = seen(eye, { out_m: 3, right_m: 1, up_m: 0 });
    const far = seen(eye, { out_m: 30, right_m: 1, up_m: 0 });
    expect(far.y).toBeLessThan(near.y);
    expect(far.x - 400).toBeLessThan((near.x - 400) / 4);
  });

  test('a raised tip is seen higher, and one swept to the right is seen to the right', () => {
    expect(tipAt(40, 0).y).toBeLessThan(tipAt(10, 0).y);
    expect(tipAt(10, 30).x).toBeGreaterThan(tipAt(10, 0).x + 10);
    expect(tipAt(10, -30).x).toBeLessThan(tipAt(10, 0).x - 10);
  });

  test('a foot of a sweep is seen as a foot on a phone, to either side', () => {
    for (const side of [1, -1]) {
      const start = { elevation_deg: 0, azimuth_deg: 60 * side };
      const sideways = eyeOf(setup, 390, 460, gazeOf('sweep', start));
      const [from, to] = [60, 70].map((deg) =>
        seen(sideways, onRod(setup, { elevation_deg: 0, azimuth_deg: deg * side }, 1))
      );
      expect(side * (to.x - from.x)).toBeGreaterThan(10);
    }
  });

  test.each([10, 45, 70])(
    'a rod lifted to %d° does not hide the line behind it',
    (elevation_deg) => {
      const width = 360;
      const eye = eyeOf(setup, width, 500, gazeOf('lift', { elevation_deg, azimuth_deg: 0 }));
      const place = (share: number) =>
        seen(eye, onRod(setup, { elevation_deg, azimuth_deg: 0 }, share));
      const [hand, tip] = [place(0), place(1)];
      const end = seen(eye, { out_m: 9, right_m: 0, up_m: 0 });
      // The rod's own straight line, carried on to the height at which the line meets the water.
      const behind = tip.x + ((hand.x - tip.x) * (end.y - tip.y)) / (hand.y - tip.y);
      // More than the rod is thick, and than a thumb takes for the same.
      expect(Math.abs(behind - end.x)).toBeGreaterThan(10);
    }
  );

  test('a rod swept over to the other side takes the gaze along, and back', () => {
    expect(gazeOf('sweep', SWEPT, 100).turned).toBe(1);
    expect(gazeOf('sweep', SWEPT, 0).turned).toBe(1);
    expect(gazeOf('sweep', SWEPT, -60).turned).toBe(-1);
    expect(gazeOf('sweep', { elevation_deg: 0, azimuth_deg: -60 }, -60).turned).toBe(1);
  });

  test('the same foot of tip travel looks shorter the farther away the tip is', () => {
    const first = Math.abs(tipAt(0, 10).x - tipAt(0, 0).x);
    const last = Math.abs(tipAt(0, 60).x - tipAt(0, 50).x);
    expect(last).toBeGreaterThan(1.1 * first);
  });

  test('the rod is pulled up in a lift and aside in a sweep', () => {
    const from = { x: 100, y: 300 };
    const arc_deg = (px: number) => ((px / PX_PER_M / 2) * 180) / Math.PI;
    const lift = new DeckGrip(from, 'lift', 2, 5).moveTo({ x: 140, y: 200 });
    expect(lift).toBeCloseTo(5 + arc_deg(100), 9);
    const sweep = new DeckGrip(from, 'sweep', 2, 5).moveTo({ x: 150, y: 90 });
    expect(sweep).toBeCloseTo(5 + arc_deg(50), 9);
  });
});

describe('a guess', () => {
  test.each([
    ['12', 'imperial', 0.3048],
    ['−3', 'imperial', -0.0762],
    ['7,5', 'metric', 0.075],
    [' 0 ', 'metric', 0]
  ] as const)('of “%s” (%s) is %d m', (text, units, m) => {
    expect(readTravel(text, units)).toBeCloseTo(m, 9);
  });

  test('a call is read in feet and inches, in one field or two', () => {
    for (const said of ['1 ft 3 in', '15', '15 in', '1\'3"'])
      expect(readTravel(said, 'imperial'), said).toBeCloseTo(0.381, 9);
    expect(readTravel('3', 'imperial', '1')).toBeCloseTo(0.381, 9);
    expect(readTravel('', 'imperial', '2')).toBeCloseTo(0.6096, 9);
    expect(readTravel('1.2 m', 'metric')).toBeCloseTo(1.2, 9);
  });

  test.each([
    ['', 'imperial', 'Give feet, inches or both, such as 1 ft 3 in.'],
    ['a foot', 'metric', '“a foot” is no length. Give centimetres, such as 38 cm.'],
    ['9999', 'metric', tied('100~m is too much. At most 15~m.')],
    ['60 ft', 'imperial', tied('60~ft is too much. At most 50~ft.')]
  ] as const)('of “%s” (%s) is asked for again', (text, units, fault) => {
    expect(readTravel(text, units)).toBe(fault);
  });
});
