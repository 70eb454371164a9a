import { seededRandom, simulate, type Move, type SetupInput } from '../../src/lib/model';
import type { UnknownName } from '../../src/lib/scoring';

/** The nominal outfit that every made-up session claims to have been done with. */
export const NOMINAL: SetupInput = {
  water: { depth_m: 3 },
  line: { material: 'fluorocarbon', diameter_m: 0.00033 },
  bait: { mass_kg: 0.0142, drag_area_m2: 6e-4 },
  rod: { length_m: 2, pivot_height_m: 1.2 },
  start: { bait_x_m: 12, slack_m: 0.15 }
};

const sweep = (from_deg: number, to_deg: number, duration_s: number): Move => {
  return { kind: 'sweep', from_deg, to_deg, duration_s, elevation_deg: 0 };
};
const lift = (from_deg: number, to_deg: number, duration_s: number): Move => {
  return { kind: 'lift', from_deg, to_deg, duration_s };
};

/** Twelve moves that a hand at a pool can make: slow and fast, low and high. */
export const MOVES: readonly Move[] = [
  sweep(0, 60, 3),
  lift(0, 20, 0.3),
  sweep(30, 60, 0.5),
  lift(0, 40, 1.5),
  sweep(0, 15, 3),
  lift(0, 60, 2),
  lift(30, 60, 0.4),
  sweep(0, 40, 0.6),
  sweep(0, 60, 1.2),
  lift(0, 30, 0.6),
  sweep(15, 45, 1.5),
  lift(15, 45, 3)
];

/** What is true of an outfit, by the fit's own names. */
export type Truth = Record<UnknownName, number>;

/** How a made-up session was measured, and where it truly took place. */
export interface Circumstances {
  readonly moves?: readonly Move[];
  /** Gear and water as the session has them. */
  readonly gear?: SetupInput;
  /** Gear and water as they truly were, less what is unknown. */
  readonly really?: SetupInput;
  /** Deviation of a measurement of this value, m. */
  readonly sd_m?: (value_m: number) => number;
  /** What the session says it is; left out, the session says nothing. */
  readonly said_m?: (value_m: number) => number;
  readonly hasHeights?: boolean;
  /** Slack was pulled out before every move, and the session says so. */
  readonly isSlackKnown?: boolean;
}

const usual_m = (value_m: number) => Math.max(0.15 * Math.abs(value_m), 0.02);

/** A session of invented measurements, and the truth they were made with. */
export function madeUp(seed: number, how: Circumstances = {}) {
  const { moves = MOVES, gear = NOMINAL, really = gear, sd_m = usual_m, said_m } = how;
  const random = seededRandom(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const truth: Truth = {
    reach_m: 2 * (1 + 0.1 * normal()),
    elevation_deg: 7 * normal(),
    slack_m: Math.min(Math.max(0.15 + 0.1 * normal(), 0), 0.6),
    drag_area_m2: 6e-4 * Math.exp(0.35 * normal()),
    lift_to_drag: Math.min(Math.max(0.2 + 0.12 * normal(), 0), 0.5)
  };
  if (how.isSlackKnown) truth.slack_m = 0;
  const measured = (value_m: number) => value_m + sd_m(value_m) * normal();
  const tests = moves.map((move) => {
    const { travel_m, peak_height_m } = trueOutcome(truth, move, really);
    const height = {
      peak_height_m: Math.max(0, measured(peak_height_m)),
      ...(said_m && { height_sd_m: said_m(peak_height_m) })
    };
    return {
      move,
      travel_m: measured(travel_m),
      ...(said_m && { travel_sd_m: said_m(travel_m) }),
      ...(how.hasHeights !== false && height)
    };
  });
  const known = how.isSlackKnown ? { slack_m: 0 } : {};
  return { session: { gear, tests, known }, truth };
}

/** What the outfit as it truly is does with a move. Written out here, apart from the fit's own way. */
export function trueOutcome(truth: Truth, move: Move, really: SetupInput = NOMINAL) {
  const { reach_m, elevation_deg: by, slack_m, drag_area_m2, lift_to_drag } = truth;
  const held =
    move.kind === 'lift'
      ? { ...move, from_deg: move.from_deg + by, to_deg: move.to_deg + by }
      : move.kind === 'sweep'
        ? { ...move, elevation_deg: move.elevation_deg + by }
        : move;
  return simulate({
    ...really,
    rod: { ...really.rod, length_m: reach_m },
    bait: { ...really.bait, drag_area_m2, lift_to_drag },
    start: { ...really.start, slack_m },
    move: held
  });
}
