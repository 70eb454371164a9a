import { fall } from '../../course/items/moves';
import { OUNCE_KG, parseScenario, simulate, type Scenario, type SetupInput } from '../../model';
import { bandsOf, type Unknowns } from '../../scoring';

/** A depth and when a falling jig is there, s after the splash, give or take. */
export interface FallTime {
  depth_m: number;
  fall_s: number;
  half_s: number;
  /** Soonest and latest. */
  ends_s: readonly [number, number];
}

export interface FallsWanted {
  setup: SetupInput;
  depths_m: readonly number[];
  unknowns?: Unknowns;
}

/** Longer than a jig of an ounce falls on any line, s a metre; a lighter one by the root of its weight. */
const LONGEST_S_A_M = 3;
/** A jig that takes longer is of no use, s. */
const LONGEST_S = 90;
/** Until it is under way, s. */
const SPLASH_S = 4;
/** The line is never so short that a jig could not lie this much farther out than it is deep. */
const LEAST_OUT_M = 2;

/**
 * When the jig passes each depth on a free spool, shallowest first: one fall into the deepest water, and
 * one in each corner of what is unknown. A jig does not feel the bottom before it is there.
 */
export function fallTimes({ setup, depths_m, unknowns = 'drag' }: FallsWanted): FallTime[] {
  const deepest_m = Math.max(...depths_m);
  const out_m = Math.max(setup.start.bait_x_m, deepest_m + LEAST_OUT_M);
  const ounces = setup.bait.mass_kg / OUNCE_KG;
  const most_s = Math.min(LONGEST_S, SPLASH_S + (LONGEST_S_A_M * deepest_m) / Math.sqrt(ounces));
  const deep = { ...setup.water, depth_m: deepest_m };
  const run = fall({ ...setup, water: deep, start: { ...setup.start, bait_x_m: out_m } }, most_s);
  const bands = bandsOf(
    parseScenario({ ...run.setup, move: run.move, hold_s: run.hold_s, until: 'bottom' }),
    (scenario) => passedAt(scenario, depths_m, most_s),
    unknowns
  );
  return depths_m.map((depth_m) => {
    const { nominal, half, ends } = bands[depth_m];
    return { depth_m, fall_s: nominal, half_s: half, ends_s: ends };
  });
}

/** By depth; `most_s` where it never got there. */
function passedAt(
  scenario: Scenario,
  depths_m: readonly number[],
  most_s: number
): Record<number, number> {
  const { trace, events } = simulate(scenario);
  const down_s = events.find(({ kind }) => kind === 'bottom')?.t_s;
  return Object.fromEntries(
    depths_m.map((depth_m) => {
      const at = trace.bait_z_m.findIndex((z) => -z >= depth_m);
      return [depth_m, at >= 0 ? trace.t_s[at] : (down_s ?? most_s)];
    })
  );
}
