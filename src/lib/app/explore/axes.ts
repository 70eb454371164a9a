import {
  clockHourToDeg,
  FOOT_M,
  INCH_M,
  OUNCE_KG,
  raisedMove,
  type Move,
  type ScenarioInput,
  type Setup
} from '$lib/model';
import {
  formatDepth,
  formatLength,
  formatTime,
  formatWeight,
  type OwnSpread,
  type Units
} from '$lib/scoring';

/** What is asked of the chart: a setup, one turn of the rod, and what its own tests left open. */
export interface ExploreBase {
  setup: Setup;
  kind: 'lift' | 'sweep';
  to_deg: number;
  duration_s: number;
  spread: OwnSpread | undefined;
}

export type AxisName = 'angle' | 'pace' | 'weight' | 'depth' | 'cast' | 'slack';

export interface Axis {
  name: string;
  least: number;
  most: number;
  /** The value that the base has. */
  of: (base: ExploreBase) => number;
  set: (base: ExploreBase, value: number) => ExploreBase;
  text: (value: number, units: Units) => string;
}

const inSetup = (base: ExploreBase, change: Partial<Setup>): ExploreBase => {
  return { ...base, setup: { ...base.setup, ...change } };
};

export const AXES: Record<AxisName, Axis> = {
  angle: {
    name: 'How far the rod turns',
    least: 10,
    most: clockHourToDeg(12),
    of: ({ to_deg }) => to_deg,
    set: (base, to_deg) => ({ ...base, to_deg }),
    text: (deg) => `${Math.round(deg)}°`
  },
  pace: {
    name: 'Seconds it takes',
    least: 0.3,
    most: 5,
    of: ({ duration_s }) => duration_s,
    set: (base, duration_s) => ({ ...base, duration_s }),
    text: (s) => formatTime(s)
  },
  weight: {
    name: 'Weight of the jig',
    least: OUNCE_KG / 4,
    most: 1.25 * OUNCE_KG,
    of: ({ setup }) => setup.bait.mass_kg,
    set: (base, mass_kg) => inSetup(base, { bait: { ...base.setup.bait, mass_kg } }),
    text: formatWeight
  },
  depth: {
    name: 'Depth',
    least: 4 * FOOT_M,
    most: 34 * FOOT_M,
    of: ({ setup }) => setup.water.depth_m,
    set: (base, depth_m) => inSetup(base, { water: { ...base.setup.water, depth_m } }),
    text: formatDepth
  },
  cast: {
    name: 'Jig out from the rod',
    least: 30 * FOOT_M,
    most: 120 * FOOT_M,
    of: ({ setup }) => setup.start.bait_x_m,
    set: (base, bait_x_m) => inSetup(base, { start: { ...base.setup.start, bait_x_m } }),
    text: formatDepth
  },
  slack: {
    name: 'Slack at the start',
    least: 0,
    most: 24 * INCH_M,
    of: ({ setup }) => setup.start.slack_m ?? 0,
    set: (base, slack_m) => inSetup(base, { start: { ...base.setup.start, slack_m } }),
    text: (m, units) => formatLength(m, units)
  }
};

/** Long enough after the move that the jig lies still, s. */
const HOLD_S = 3;

/** The base as a scenario; a hand whose own angle is known makes its moves so much higher. */
export function exploredScenario(base: ExploreBase): ScenarioInput {
  const { setup, kind, to_deg, duration_s, spread } = base;
  const turn = { from_deg: 0, to_deg, duration_s };
  const move: Move = kind === 'lift' ? { kind, ...turn } : { kind, ...turn, elevation_deg: 0 };
  return {
    ...setup,
    move: raisedMove(move, spread?.middle.elevation_deg ?? 0),
    hold_s: HOLD_S
  };
}

/** Few values first, so that there is a picture at once; then those between. */
export function valuesOn({ least, most }: Axis): { first: number[]; finer: number[] } {
  const at = (i: number, of: number) => least + ((most - least) * i) / of;
  const finer = Array.from({ length: FINE + 1 }, (_, i) => i).filter((i) => i % EACH !== 0);
  return {
    first: Array.from({ length: FINE / EACH + 1 }, (_, i) => at(i * EACH, FINE)),
    finer: finer.map((i) => at(i, FINE))
  };
}
const FINE = 24;
/** Every so many of them are there first, and get a band. */
const EACH = 4;
