import { describe, expect, test } from 'vitest';
import { byHand } from '../../src/lib/course/hand';
import { seededRandom } from '../../src/lib/model';

const start = { elevation_deg: 5, azimuth_deg: 40 };
const sweep = { kind: 'sweep', from_deg: 40, to_deg: 60, duration_s: 2, elevation_deg: 5 } as const;

describe('a rough hand', () => {
  test('turns further and quicker by the shares given', () => {
    const input = byHand(sweep, start, { reach: 0.1, pace: 0.25, isEven: false });
    const azimuth = input.azimuth_deg as number[];
    expect(azimuth).toHaveLength(161);
    expect(azimuth[0]).toBe(40);
    expect(azimuth[160]).toBeCloseTo(62, 9);
    expect(input.elevation_deg).toEqual(new Array(161).fill(5));
  });

  test('is at the same rate throughout when it is even, and slow to start when it is not', () => {
    const quarter = (isEven: boolean) =>
      (byHand(sweep, start, { reach: 0, pace: 0, isEven }).azimuth_deg as number[])[50];
    expect(quarter(true)).toBeCloseTo(45, 9);
    // Minimum jerk has done 10.35 % of its way after a quarter of its time.
    expect(quarter(false)).toBeCloseTo(40 + 20 * 0.103515625, 9);
  });

  test('makes hops with their pauses', () => {
    const up = { kind: 'lift', from_deg: 10, to_deg: 30, duration_s: 0.5 } as const;
    const hops = {
      kind: 'sequence',
      moves: [up, { kind: 'pause', duration_s: 1 }, { ...up, from_deg: 30, to_deg: 10 }]
    } as const;
    const lifted = { elevation_deg: 10, azimuth_deg: 0 };
    const { elevation_deg } = byHand({ ...hops, moves: [...hops.moves] }, lifted, {
      reach: 0.1,
      pace: 0,
      isEven: true
    });
    const angles = elevation_deg as number[];
    expect([angles[0], angles[50], angles[120], angles[200]].map((a) => a.toFixed(6))).toEqual([
      '10.000000',
      '32.000000',
      '32.000000',
      '10.000000'
    ]);
  });

  test('cannot make a move that is no turn of the rod', () => {
    const path = { kind: 'tip_path', t_s: [0, 1], x_m: [2, 1], z_m: [1, 1] } as const;
    const move = { ...path, t_s: [...path.t_s], x_m: [...path.x_m], z_m: [...path.z_m] };
    expect(() => byHand(move, start, { reach: 0, pace: 0, isEven: true })).toThrow(/tip_path/);
  });
});

describe('seeded numbers', () => {
  test('are the same for the same seed and others for another', () => {
    const three = (seed: number) => {
      const random = seededRandom(seed);
      return [random(), random(), random()];
    };
    expect(three(7)).toEqual(three(7));
    expect(three(7)).not.toEqual(three(8));
  });

  test('fill 0 to 1 evenly', () => {
    const random = seededRandom(3);
    const tenths = new Array<number>(10).fill(0);
    for (let i = 0; i < 10_000; i++) tenths[Math.floor(random() * 10)]++;
    // 1,000 are expected in each; 150 is five standard deviations.
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});
