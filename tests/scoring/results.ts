import { liftsOf, type Hop, type Result } from '../../src/lib/model';
import {
  gradeRun,
  parseChallenge,
  type Challenge,
  type Goal,
  type GradedRun
} from '../../src/lib/scoring';
import { runToGrade, type RunToGrade } from '../../src/lib/scoring/run-to-grade';

/** A result made up for a test: what is not said is a bait that never moved. */
export interface MadeUp {
  travel_m?: number;
  peak_height_m?: number;
  hopHeights_m?: number[];
  touched?: boolean[];
  /** One tick each; the bait moves a centimetre in each, so that all of them count. */
  contact?: (0 | 1)[];
}

/** The height of the bottom under it, m. */
const LEVEL_M = -3;

/** The same with the lifts that its trace has over a level bottom: for one whose trace was changed. */
export function withLifts(result: Result, level_m = LEVEL_M): Result {
  return { ...result, lifts: liftsOf(result.trace, () => level_m) };
}

export function resultOf(made: MadeUp): Result {
  const contact = made.contact ?? [1];
  const ticks = contact.length;
  const along = (from: number, step: number) =>
    Array.from({ length: ticks }, (_, i) => from + i * step);
  const level = along(LEVEL_M, 0);
  return withLifts({
    travel_m: made.travel_m ?? 0,
    peak_height_m: made.peak_height_m ?? 0,
    contact_fraction: 1,
    airborne_s: 0,
    peak_tip_tension_N: 0,
    events: [],
    hops: (made.hopHeights_m ?? []).map(hopOf),
    stones: (made.touched ?? []).map((touched, index) => ({ index, touched })),
    trace: {
      t_s: along(0, 0.01),
      tip_x_m: along(2, 0),
      tip_z_m: along(1, 0),
      bait_x_m: along(10, -0.01),
      // Off the bottom it is two inches up, which is no grain of it.
      bait_z_m: level.map((z, i) => (contact[i] === 1 ? z : z + 0.05)),
      tip_tension_N: along(0, 0),
      bait_tension_N: along(0, 0),
      contact
    },
    lifts: [],
    model: { version: 'made up', segments: 1, step_s: 0.01 }
  });
}

function hopOf(height_m: number, i: number): Hop {
  return { t_s: i, length_m: 0.1, height_m, duration_s: 0.2 };
}

/** A made-up result as the challenge's reference would have made it. */
export function gradedAs(challenge: Challenge, result: Result): GradedRun {
  return { result, grade: gradeRun(challenge, { move: challenge.reference, result }) };
}

/** A made-up result over the plain challenge's level bottom. */
export function overLevel(result: Result): RunToGrade {
  return runToGrade(plainChallenge.setup, plainChallenge.reference, result);
}

/** A sweep over flat sand, aimed at the given goals. */
export function challengeOf(goals: (Goal & { weight: number })[], more: Partial<Challenge> = {}) {
  return parseChallenge({ ...plainChallenge, goals, ...more });
}

export const oneFootGoals: Challenge['goals'] = [
  { kind: 'travel', target_m: 0.3, band_m: 0.04, weight: 50 },
  { kind: 'contact', least: 0.9, weight: 30 },
  { kind: 'speed', most_m_s: 0.35, weight: 20 }
];

export const plainChallenge = {
  id: 'plain-drag',
  title: 'A plain drag',
  ask: 'Drag it {length:0.3}.',
  setup: {
    water: { depth_m: 3.1 },
    line: { diameter_m: 0.00028 },
    bait: { mass_kg: 0.016, drag_area_m2: 7e-4 },
    rod: { length_m: 2.1, pivot_height_m: 1.2, tip_stiffness_N_per_m: 25 },
    start: { bait_x_m: 9, slack_m: 0.04 }
  },
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 55 },
  hold_s: 3,
  goals: oneFootGoals,
  visibility: 'seen',
  reference: { kind: 'sweep', from_deg: 55, to_deg: 65, duration_s: 3, elevation_deg: 0 },
  beginner: { kind: 'sweep', from_deg: 55, to_deg: 80, duration_s: 0.5, elevation_deg: 0 }
} satisfies Challenge;
