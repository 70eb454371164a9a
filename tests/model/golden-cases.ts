import { simulate, type Result, type ScenarioInput } from '../../src/lib/model';

/** One run of each kind that the model knows. Unequal numbers, so that no two faults cancel. */
const BASE: ScenarioInput = {
  water: { depth_m: 4.3, temperature_C: 12 },
  line: { diameter_m: 0.00031 },
  bait: { mass_kg: 0.0163, submerged_weight_fraction: 0.9, drag_area_m2: 7e-4 },
  start: { bait_x_m: 17, slack_m: 0.06 },
  move: { kind: 'lift', from_deg: 5, to_deg: 52, duration_s: 0.55 },
  hold_s: 3
};
const held = { kind: 'lift' as const, from_deg: 20, to_deg: 20.01, duration_s: 0.1 };
const sweep = { kind: 'sweep' as const, from_deg: 0, to_deg: 55, duration_s: 2.5 };
const reeled = (line_m: number, duration_s: number) => ({
  kind: 'sequence' as const,
  moves: [held, { kind: 'reel' as const, line_m, duration_s }]
});

export const GOLDEN_CASES: Record<string, ScenarioInput> = {
  lift: BASE,
  sweep: { ...BASE, move: sweep },
  'fall on a free spool': {
    ...BASE,
    start: { bait_x_m: 17, line: 'splash', spool: 'free', slack_m: 0.05 },
    move: held,
    hold_s: 9
  },
  'fall on a closed spool': {
    ...BASE,
    start: { bait_x_m: 17, line: 'splash', slack_m: 0.05 },
    move: held,
    hold_s: 9
  },
  reel: { ...BASE, move: reeled(2.2, 4), hold_s: 1 },
  swim: { ...BASE, move: reeled(7, 6), hold_s: 0 },
  snag: {
    ...BASE,
    bottom: { friction: 0.45, snags: true, stones: [{ x_m: 16.2, width_m: 0.4, height_m: 0.25 }] },
    move: { ...sweep, to_deg: 75 }
  },
  bite: { ...BASE, bites: [{ t_s: 1.2, kind: 'tap' }], move: held },
  stems: { ...BASE, bottom: { ground: { kind: 'brush', seed: 3 } }, move: sweep },
  mud: { ...BASE, bottom: { ground: { kind: 'mud', seed: 1 } }, move: sweep },
  slope: {
    ...BASE,
    bottom: { friction: 0.4, profile: { x_m: [0, 30], z_m: [-3.2, -5.4] } },
    move: sweep
  },
  'wind and drift': { ...BASE, wind_m_s: 6, drift_m_s: -0.2, move: held },
  'leader on braid, bending rod': {
    ...BASE,
    line: {
      material: 'braid',
      diameter_m: 0.00021,
      leader: { material: 'fluorocarbon', diameter_m: 0.0003, length_m: 1.7 }
    },
    rod: { tip_stiffness_N_per_m: 25 }
  },
  'a knot that parts': { ...BASE, line: { diameter_m: 0.00031, breaking_load_N: 1.2 } }
};

/** What of a run is kept: four numbers, and the bait every half a second. */
export interface GoldenTrace {
  travel_m: number;
  peak_height_m: number;
  peak_tip_tension_N: number;
  events: string[];
  bait_x_m: number[];
  bait_z_m: number[];
}

const EVERY_TICKS = 50;

export function goldenTrace(scenario: ScenarioInput): GoldenTrace {
  const { travel_m, peak_height_m, peak_tip_tension_N, events, trace }: Result = simulate(scenario);
  const sampled = (list: number[]) =>
    list.filter((_, i) => i % EVERY_TICKS === 0).map((value) => Number(value.toFixed(7)));
  return {
    travel_m: Number(travel_m.toFixed(7)),
    peak_height_m: Number(peak_height_m.toFixed(7)),
    peak_tip_tension_N: Number(peak_tip_tension_N.toFixed(6)),
    events: events.map(({ kind }) => kind),
    bait_x_m: sampled(trace.bait_x_m),
    bait_z_m: sampled(trace.bait_z_m)
  };
}
