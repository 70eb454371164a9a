import {
  clockHourToDeg,
  degToClockHour,
  degToRad,
  FOOT_M,
  INCH_M,
  OUNCE_KG,
  parseSetup,
  type Setup,
  type SetupInput
} from '$lib/model';
import {
  formatDepth,
  formatTime,
  formatWeight,
  formatWind,
  MPH_M_S,
  withUnit,
  type Units
} from '$lib/scoring';
import { lineName, LINES, MATERIAL_NAMES, namedLine, type LineChoice } from '$lib/sandbox/gear';
import type { ExploreBase } from './base';

export type AxisName =
  'tip' | 'hour' | 'pace' | 'weight' | 'depth' | 'cast' | 'line' | 'slack' | 'planing' | 'wind';

/** An axis in one system of units, its numbers in `unit`: round for whoever reads them. */
interface Scale {
  /** One `unit` in SI. */
  size: number;
  unit: string;
  least: number;
  most: number;
  /** From one number on the axis to the next. */
  tick: number;
  /** The smallest value that can be run, where that is more than `least`. */
  from?: number;
}

export interface Axis {
  name: string;
  scale: Record<Units, Scale>;
  /** Runs from one tick to the next, at the finest. */
  perTick: number;
  /** The value that the base has. */
  of: (base: ExploreBase) => number;
  set: (base: ExploreBase, value: number) => ExploreBase;
  /** As a sentence has it. */
  text: (value: number, units: Units) => string;
  /** What the base has, where it need not be a value of the axis; as `text` unless said otherwise. */
  said?: (base: ExploreBase, units: Units) => string;
  /** As it stands under its tick; the number alone unless said otherwise. */
  tickText?: (value: number, units: Units) => string;
  /** What stands once under all neighbours that share it. */
  groupText?: (value: number) => string;
  /** Values that stand beside each other with nothing between. */
  isChoice?: boolean;
}

const inSetup = (base: ExploreBase, change: Partial<SetupInput>): ExploreBase => {
  return { ...base, setup: parseSetup({ ...base.setup, ...change }) };
};
const inStart = (base: ExploreBase, start: Partial<Setup['start']>) =>
  inSetup(base, { start: { ...base.setup.start, ...start } });
const inBait = (base: ExploreBase, bait: Partial<Setup['bait']>) =>
  inSetup(base, { bait: { ...base.setup.bait, ...bait } });
const number = (value: number) => `${Number(value.toFixed(2))}`;

/** Lines that one would choose between, thin to thick of each material. */
const SHOWN_LINES: readonly LineChoice[] = LINES.filter(({ material, strength_lb }) =>
  (material === 'braid' ? [20, 40] : [8, 12, 20]).includes(strength_lb)
);
const lineAt = (i: number) => SHOWN_LINES[Math.round(i)] ?? SHOWN_LINES[0];

/** "10:30" */
function hourText(hour: number): string {
  const minutes = Math.round(hour * 60);
  return `${Math.floor(minutes / 60)}:${`${minutes % 60}`.padStart(2, '0')}`;
}

/** Where it blows: along x, away from the rod, is at the back. */
function windSide(m_s: number): string {
  if (Math.abs(m_s) < 1e-6) return '';
  return m_s > 0 ? 'at your back' : 'in your face';
}

/** Nearest of the lines shown: of its own material, by its diameter. */
function lineIndex({ material, diameter_m }: Setup['line']): number {
  const off = SHOWN_LINES.map((one) => {
    return one.material === material ? Math.abs(one.diameter_m - diameter_m) : 1;
  });
  return off.indexOf(Math.min(...off));
}

export const AXES: Record<AxisName, Axis> = {
  tip: {
    name: 'Tip moves',
    scale: {
      imperial: { size: FOOT_M, unit: 'ft', least: 0, most: 5, tick: 1, from: 0.25 },
      metric: { size: 1, unit: 'm', least: 0, most: 1.5, tick: 0.3, from: 0.1 }
    },
    perTick: 4,
    of: ({ tip_m }) => tip_m,
    set: (base, tip_m) => ({ ...base, tip_m }),
    text: (m, units) =>
      units === 'metric' ? withUnit(number(m), 'm') : withUnit(number(m / FOOT_M), 'ft')
  },
  hour: {
    name: 'Rod lifts from 9 to',
    scale: {
      imperial: { size: 1, unit: 'o’clock', least: 9, most: 12, tick: 1, from: 9.5 },
      metric: { size: 1, unit: 'o’clock', least: 9, most: 12, tick: 1, from: 9.5 }
    },
    perTick: 2,
    of: ({ tip_m, setup }) => degToClockHour((tip_m / setup.rod.length_m) * (180 / Math.PI)),
    set: (base, hour) => ({
      ...base,
      tip_m: degToRad(clockHourToDeg(hour)) * base.setup.rod.length_m
    }),
    text: (hour) => withUnit(hourText(hour), 'o’clock')
  },
  pace: {
    name: 'Move takes',
    scale: {
      imperial: { size: 1, unit: 's', least: 0, most: 6, tick: 1, from: 0.2 },
      metric: { size: 1, unit: 's', least: 0, most: 6, tick: 1, from: 0.2 }
    },
    perTick: 5,
    of: ({ duration_s }) => duration_s,
    set: (base, duration_s) => ({ ...base, duration_s }),
    text: (s) => formatTime(s)
  },
  weight: {
    name: 'Jig weighs',
    scale: {
      imperial: { size: OUNCE_KG, unit: 'oz', least: 0.25, most: 1.25, tick: 0.25 },
      metric: { size: 1e-3, unit: 'g', least: 5, most: 35, tick: 5 }
    },
    perTick: 4,
    of: ({ setup }) => setup.bait.mass_kg,
    set: (base, mass_kg) => inBait(base, { mass_kg }),
    text: formatWeight,
    tickText: (kg, units) => formatWeight(kg, units).split(/\s/)[0]
  },
  depth: {
    name: 'Depth',
    scale: {
      imperial: { size: FOOT_M, unit: 'ft', least: 5, most: 35, tick: 5 },
      metric: { size: 1, unit: 'm', least: 2, most: 10, tick: 2 }
    },
    perTick: 5,
    of: ({ setup }) => setup.water.depth_m,
    set: (base, depth_m) => inSetup(base, { water: { ...base.setup.water, depth_m } }),
    text: formatDepth
  },
  cast: {
    name: 'Jig out from the rod',
    scale: {
      imperial: { size: FOOT_M, unit: 'ft', least: 30, most: 120, tick: 15 },
      metric: { size: 1, unit: 'm', least: 10, most: 35, tick: 5 }
    },
    perTick: 5,
    of: ({ setup }) => setup.start.bait_x_m,
    set: (base, bait_x_m) => inStart(base, { bait_x_m }),
    text: formatDepth
  },
  line: {
    name: 'Line',
    scale: {
      imperial: { size: 1, unit: 'lb', least: 0, most: SHOWN_LINES.length - 1, tick: 1 },
      metric: { size: 1, unit: 'mm', least: 0, most: SHOWN_LINES.length - 1, tick: 1 }
    },
    perTick: 1,
    of: ({ setup }) => lineIndex(setup.line),
    set: (base, i) => {
      const { material, diameter_m } = lineAt(i);
      return inSetup(base, { line: { material, diameter_m } });
    },
    text: (i, units) => lineName(lineAt(i), units),
    said: ({ setup }, units) => lineName(namedLine(setup.line), units),
    tickText: (i, units) => lineName(lineAt(i), units).split(/\s/)[0],
    groupText: (i) => MATERIAL_NAMES[lineAt(i).material],
    isChoice: true
  },
  slack: {
    name: 'Slack at the start',
    scale: {
      imperial: { size: INCH_M, unit: 'in', least: 0, most: 24, tick: 6 },
      metric: { size: 0.01, unit: 'cm', least: 0, most: 60, tick: 15 }
    },
    perTick: 6,
    of: ({ setup }) => setup.start.slack_m ?? 0,
    set: (base, slack_m) => inStart(base, { slack_m }),
    text: (m, units) =>
      units === 'metric' ? withUnit(number(m * 100), 'cm') : withUnit(number(m / INCH_M), 'in')
  },
  planing: {
    name: 'Jig rides up on its skirt',
    scale: {
      imperial: { size: 0.01, unit: '%', least: 0, most: 40, tick: 10 },
      metric: { size: 0.01, unit: '%', least: 0, most: 40, tick: 10 }
    },
    perTick: 5,
    of: ({ setup }) => setup.bait.lift_to_drag,
    set: (base, lift_to_drag) => inBait(base, { lift_to_drag }),
    text: (share) => (share === 0 ? 'not at all' : `${Math.round(100 * share)}%`)
  },
  wind: {
    name: 'Wind',
    scale: {
      imperial: { size: MPH_M_S, unit: 'mph', least: -20, most: 20, tick: 10 },
      metric: { size: 1, unit: 'm/s', least: -10, most: 10, tick: 5 }
    },
    perTick: 5,
    of: ({ setup }) => setup.wind_m_s,
    set: (base, wind_m_s) => inSetup(base, { wind_m_s }),
    text: (m_s, units) =>
      windSide(m_s) ? `${formatWind(Math.abs(m_s), units)} ${windSide(m_s)}` : 'none',
    tickText: (m_s, units) => number(Math.abs(m_s) / (units === 'metric' ? 1 : MPH_M_S)),
    groupText: windSide
  }
};

/** The least and the most that can be run, SI. */
export function rangeOf({ scale, perTick }: Axis, units: Units) {
  const { size, least, most, tick, from = least } = scale[units];
  return { least: from * size, most: most * size, step: (tick / perTick) * size };
}

/** Where the numbers stand, SI, all of them. */
export function ticksOf({ scale }: Axis, units: Units): number[] {
  const { size, least, most, tick } = scale[units];
  const count = Math.round((most - least) / tick);
  return Array.from({ length: count + 1 }, (_, i) => (least + i * tick) * size);
}

export function tickText(axis: Axis, value: number, units: Units): string {
  return axis.tickText?.(value, units) ?? number(value / axis.scale[units].size);
}

/** Values at the numbers first, so that there is a picture at once; then those between. */
export function valuesOn(axis: Axis, units: Units): { first: number[]; finer: number[] } {
  const { least } = rangeOf(axis, units);
  const ticks = ticksOf(axis, units);
  const step = (ticks[1] - ticks[0]) / axis.perTick;
  const count = (ticks.length - 1) * axis.perTick;
  const between = Array.from({ length: count }, (_, i) => i)
    .filter((i) => i % axis.perTick !== 0)
    .map((i) => ticks[0] + i * step);
  const isRunnable = (value: number) => value >= least - step / 100;
  return {
    first: [...(least > ticks[0] ? [least] : []), ...ticks.filter(isRunnable)],
    // Where the least that can be run lies between two steps it is there already.
    finer: between.filter((value) => isRunnable(value) && Math.abs(value - least) > step / 100)
  };
}
