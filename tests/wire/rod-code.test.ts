import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asSent, decodeRod, encodeRod } from '../../src/lib/wire';
import { MOST_SAMPLES } from '../../src/lib/model';
import { aSweep } from '../practice/drag';

const angles = fc.array(fc.double({ min: -360, max: 360, noNaN: true }), {
  minLength: 2,
  maxLength: 300
});

describe('a rod input in letters', () => {
  test('is the same to half a step, whatever it was', () => {
    fc.assert(
      fc.property(angles, angles, (elevation_deg, line) => {
        const line_in_m = line.map((value) => value / 6);
        const input = { kind: 'rod_input', rate_Hz: 100, azimuth_deg: 12.34 } as const;
        const back = asSent({ ...input, elevation_deg, line_in_m });
        expect(back.azimuth_deg).toBe(12.34);
        const worst = (a: number[], b: number[]) =>
          Math.max(...a.map((value, i) => Math.abs(value - b[i])));
        // Half a step, and the rounding of a division.
        expect(worst(elevation_deg, back.elevation_deg as number[])).toBeLessThan(0.005 + 1e-9);
        expect(worst(line_in_m, back.line_in_m as number[])).toBeLessThan(0.0005 + 1e-9);
      })
    );
  });

  test('does not change when it is sent again', () => {
    const once = asSent(aSweep(17));
    expect(asSent(once)).toEqual(once);
  });

  test('takes little more than a letter a sample', () => {
    const { azimuth } = encodeRod(aSweep(30, 4));
    // 401 samples: the first two name a place and a way back to rest, the others are one letter each.
    expect(azimuth).toHaveLength(405);
  });

  const good = { elevation: 0, azimuth: 'AAAA' };
  test.each([
    ['a letter that is none', { ...good, azimuth: 'AA!A' }, 'azimuth', 'base 64'],
    ['an end in the middle', { ...good, azimuth: 'AAg' }, 'azimuth', 'ends in the middle'],
    ['one sample', { ...good, azimuth: 'A' }, 'azimuth', 'two samples'],
    ['a number too large', { ...good, azimuth: 'gggggggggA' }, 'azimuth', 'too large'],
    ['too many samples', { ...good, elevation: 'A'.repeat(MOST_SAMPLES + 1) }, 'elevation', '']
  ])('%s is refused by field', (_, coded, path, reason) => {
    expect(() => decodeRod(coded)).toThrow(
      expect.objectContaining({ path, message: expect.stringContaining(reason) })
    );
  });
});
