import type { ScenarioInput, SetupInput } from '../../src/lib/model';

export const MODEL_SETUP: SetupInput = {
  water: { depth_m: 4, temperature_C: 15 },
  bottom: { friction: 0.4 },
  line: { material: 'fluorocarbon', diameter_m: 0.00033 },
  bait: { mass_kg: 0.021, submerged_weight_fraction: 0.912 },
  rod: { length_m: 1.9, pivot_height_m: 1.2 },
  start: { bait_x_m: 24, slack_m: 0.15 }
};

const BASE: ScenarioInput = {
  ...MODEL_SETUP,
  move: { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.35 },
  hold_s: 6
};

const LONG_LIFT = { kind: 'lift' as const, from_deg: 0, to_deg: 60, duration_s: 0.5 };

/** What people do with a jig, from a slow drag to a hard snap, on every line and in deep water. */
export const MODEL_CASES: Record<string, ScenarioInput> = {
  'lift of an hour': BASE,
  'lift of three hours': { ...BASE, move: { ...LONG_LIFT, to_deg: 90, duration_s: 0.8 } },
  'light bait': { ...BASE, bait: { mass_kg: 0.01 }, move: LONG_LIFT },
  snap: {
    ...BASE,
    start: { bait_x_m: 18, slack_m: 0.05 },
    move: { kind: 'lift', from_deg: 30, to_deg: 75, duration_s: 0.2 }
  },
  'fast sweep': { ...BASE, move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 0.5 } },
  'slow sweep': { ...BASE, move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 4 } },
  'little slack': { ...BASE, start: { bait_x_m: 24, slack_m: 0.02 } },
  'much slack': { ...BASE, start: { bait_x_m: 24, slack_m: 0.5 }, move: LONG_LIFT },
  'straight start': { ...BASE, start: { bait_x_m: 24, line: 'straight', pretension_N: 0.05 } },
  'bending rod': { ...BASE, rod: { tip_stiffness_N_per_m: 8 }, move: LONG_LIFT },
  nylon: { ...BASE, line: { material: 'nylon', diameter_m: 0.00035 }, move: LONG_LIFT },
  braid: { ...BASE, line: { material: 'braid', diameter_m: 0.00025 }, move: LONG_LIFT },
  'deep water': {
    ...BASE,
    water: { depth_m: 12 },
    start: { bait_x_m: 15, slack_m: 0.1 },
    move: LONG_LIFT
  },
  'three hops': {
    ...BASE,
    move: {
      kind: 'sequence',
      moves: [
        { kind: 'lift', from_deg: 30, to_deg: 40, duration_s: 0.2 },
        { kind: 'pause', duration_s: 0.7 },
        { kind: 'lift', from_deg: 40, to_deg: 50, duration_s: 0.2 },
        { kind: 'pause', duration_s: 0.7 },
        { kind: 'lift', from_deg: 50, to_deg: 60, duration_s: 0.2 }
      ]
    }
  }
};

/** A chart's sweep: so many runs of so many seconds. */
export const SWEEP_RUNS = 40;
const SWEEP_S = 8;
const SWEEP_MOVE_S = 3;

/** One of them: as many lengths of a slow sweep. */
export function sweepScenario(i: number): ScenarioInput {
  return {
    ...MODEL_SETUP,
    move: { kind: 'sweep', from_deg: 0, to_deg: 20 + i, duration_s: SWEEP_MOVE_S },
    hold_s: SWEEP_S - SWEEP_MOVE_S
  };
}
