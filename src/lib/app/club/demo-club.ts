import type { TestSession } from '$lib/wire';

type Test = TestSession['tests'][number];

const sweep = (from_deg: number, to_deg: number, duration_s: number) =>
  ({ kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg: 0 }) as const;
const lift = (from_deg: number, to_deg: number, duration_s: number) =>
  ({ kind: 'lift', from_deg, to_deg, duration_s }) as const;
const MOVES = [
  sweep(0, 60, 3),
  lift(0, 20, 0.3),
  sweep(30, 60, 0.5),
  lift(0, 40, 1.5),
  sweep(0, 60, 1.2),
  lift(30, 60, 0.4)
];
/** Of each measurement, as a part of it, and at the least, m. */
const ERROR_PART = 0.08;
const LEAST_ERROR_M = 0.02;

/**
 * Four people who never were, with one jig: the model's own moves at a drag area of 5 cm² and planing of
 * 0.22, each with another rod and slack, off by 8 % or 2 cm (one deviation) and told to the centimetre.
 * The last one's jig had 13 cm², as with a big trailer that nobody wrote down.
 */
const PEOPLE = [
  {
    by: 'Ana',
    reach_m: 1.75,
    slack_m: 0.1,
    ways: [
      [0.94, 0],
      [0.47, 0.11],
      [0.67, 0.11],
      [0.91, 0.08],
      [0.91, 0.13],
      [1.09, 0.33]
    ]
  },
  {
    by: 'Ben',
    reach_m: 1.9,
    slack_m: 0.06,
    ways: [
      [1.02, 0.01],
      [0.4, 0.1],
      [0.74, 0.2],
      [0.88, 0.08],
      [1.09, 0.22],
      [1.04, 0.41]
    ]
  },
  {
    by: 'Cleo',
    reach_m: 1.7,
    slack_m: 0.14,
    ways: [
      [0.83, 0],
      [0.44, 0.06],
      [0.58, 0.11],
      [0.85, 0.02],
      [0.74, 0.07],
      [0.79, 0.27]
    ]
  },
  {
    by: 'Dov',
    reach_m: 1.8,
    slack_m: 0.1,
    ways: [
      [0.83, 0.04],
      [0.4, 0.1],
      [0.6, 0.18],
      [1, 0.2],
      [0.82, 0.25],
      [0.8, 0.33]
    ]
  }
];

/** Invented sessions of a club, to show how its table goes. */
export function demoClub(at: string): TestSession[] {
  return PEOPLE.map(({ by, reach_m, slack_m, ways }, i) => ({
    id: `demo-of-a-club-${i}`.padEnd(16, '0'),
    name: 'Half ounce at the pool',
    at,
    on: at.slice(0, 10),
    by,
    notes: 'Made-up numbers, to show how it works.',
    gear: {
      water: { depth_m: 3 },
      line: { material: 'fluorocarbon', diameter_m: 0.00028 },
      bait: { mass_kg: 0.0142, drag_area_m2: 6e-4 },
      rod: { length_m: reach_m, pivot_height_m: 1.2 },
      start: { bait_x_m: 12, slack_m: 0.12 }
    },
    tests: ways.map(([travel_m, peak_height_m], test) =>
      testOf(MOVES[test], travel_m, peak_height_m)
    ),
    known: { slack_m },
    drops: [],
    invented: true
  }));
}

function testOf(move: Test['move'], travel_m: number, peak_height_m: number): Test {
  const error = (m: number) => Math.max(LEAST_ERROR_M, ERROR_PART * m);
  return {
    ...{ move, travel_m, peak_height_m, note: '' },
    travel_sd_m: error(travel_m),
    height_sd_m: error(peak_height_m)
  };
}
