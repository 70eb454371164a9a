import { shownDrag } from '$lib/course/items/moves';
import {
  clockHourToDeg,
  degToRad,
  FOOT_M,
  raisedMove,
  type Move,
  type ScenarioInput,
  type Setup,
  type SetupInput
} from '$lib/model';
import type { OwnSpread } from '$lib/scoring';

/** What a chart is of: a setup, one move of the tip, and what is open of gear and hand. */
export interface ExploreBase {
  setup: Setup;
  kind: 'lift' | 'sweep';
  /** Way of the tip: along its arc in a lift, away from the jig in a sweep. */
  tip_m: number;
  duration_s: number;
  /** What the gear's own tests left open. */
  spread?: OwnSpread;
  /** Nine tries in ten of this hand lie within such a part of the tip's way; null for a hand not known. */
  hand: number | null;
}

/** How far out a lift is charted at first, m, and how long it takes, s. */
export const LIFT_OUT_M = 30 * FOOT_M;
export const LIFT_S = 1;

/** What a lift is charted with at first: a rod that goes from 9 to 10:30 in a second, the jig close. */
export function firstLift(base: ExploreBase): ExploreBase {
  const { setup } = base;
  return {
    ...base,
    kind: 'lift',
    setup: { ...setup, start: { ...setup.start, bait_x_m: LIFT_OUT_M } },
    tip_m: degToRad(clockHourToDeg(10.5)) * setup.rod.length_m,
    duration_s: LIFT_S
  };
}

/** Long enough after the move that the jig lies still, s. */
const REST_S = 3;
/** The rod from level to upright. */
const MOST_LIFT_RAD = Math.PI / 2;

/**
 * The base as a scenario; a hand whose own angle is known makes its moves so much higher. Null for a
 * move that this rod cannot make.
 */
export function exploredScenario(base: ExploreBase, hold_s = REST_S): ScenarioInput | null {
  const move = moveOf(base);
  if (!move) return null;
  return { ...base.setup, move: raisedMove(move, base.spread?.middle.elevation_deg ?? 0), hold_s };
}

function moveOf({ setup, kind, tip_m, duration_s }: ExploreBase): Move | null {
  if (kind === 'lift') {
    const turn_rad = tip_m / setup.rod.length_m;
    // A hair over: a whole turn that was made from an hour and back.
    if (turn_rad > MOST_LIFT_RAD * 1.001) return null;
    return { kind, from_deg: 0, to_deg: (turn_rad * 180) / Math.PI, duration_s };
  }
  try {
    return shownDrag(setup as SetupInput, tip_m, duration_s).move;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** The same move as the hand makes it at the two ends of nine tries in ten: short, and long. */
export function handEnds(base: ExploreBase): [ExploreBase, ExploreBase] | null {
  const { tip_m, hand } = base;
  if (hand === null) return null;
  return [
    { ...base, tip_m: tip_m * Math.max(0, 1 - hand) },
    { ...base, tip_m: tip_m * (1 + hand) }
  ];
}
