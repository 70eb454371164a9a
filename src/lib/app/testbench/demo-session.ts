import type { TestSession } from '$lib/wire';

type Made = Pick<TestSession, 'id' | 'at' | 'on'>;

/**
 * An invented session: the model’s own moves with a rod that reaches 2.04 m, is held 3½° low, with 11 cm
 * of slack, a drag area of 3.5 cm² and planing of 0.23, each measurement off by 15 % or 2 cm (one
 * deviation), to the centimetre.
 */
export function demoSession(made: Made): TestSession {
  const sweep = (from_deg: number, to_deg: number, duration_s: number) =>
    ({ kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg: 0 }) as const;
  const lift = (from_deg: number, to_deg: number, duration_s: number) =>
    ({ kind: 'lift', from_deg, to_deg, duration_s }) as const;
  const rows = [
    [sweep(0, 60, 3), 1.03, 0.03],
    [lift(0, 20, 0.3), 0.52, 0.1],
    [sweep(30, 60, 0.5), 0.77, 0.19],
    [lift(0, 40, 1.5), 1.14, 0.07],
    [sweep(0, 15, 3), 0.05, 0.01],
    [lift(0, 60, 2), 1.59, 0.3],
    [lift(30, 60, 0.4), 0.99, 0.43],
    [sweep(0, 40, 0.6), 0.62, 0.07],
    [sweep(0, 60, 1.2), 1.21, 0.14],
    [lift(0, 30, 0.6), 0.81, 0.18]
  ] as const;
  return {
    ...made,
    by: '',
    known: {},
    drops: [],
    name: 'Demo: a made-up afternoon',
    notes: 'Made-up numbers, to show how it works.',
    gear: {
      water: { depth_m: 3 },
      line: { material: 'fluorocarbon', diameter_m: 0.00033 },
      bait: { mass_kg: 0.0142, drag_area_m2: 6e-4 },
      rod: { length_m: 2, pivot_height_m: 1.2 },
      start: { bait_x_m: 12, slack_m: 0.15 }
    },
    tests: rows.map(([move, travel_m, peak_height_m]) => ({
      move,
      travel_m,
      peak_height_m,
      note: ''
    })),
    invented: true
  };
}
