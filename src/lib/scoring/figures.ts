import { FOOT_M, INCH_M } from '../model';
import {
  formatFine,
  formatLength,
  formatShare,
  formatSpeed,
  formatTime,
  toldLength,
  withUnit,
  type Units
} from './display';
import type { FigureScale, FigureUnit, TaskFigure } from './goals';
import { toldWay } from './way-words';

type Written = Pick<FigureScale, 'unit'>;

/** A value of a task's figure as a learner reads it: 11 in, 2 s, 0.4 ft/s, 75 %, 3, 82 marks. */
export function formatFigure({ unit }: Written, value: number, units: Units): string {
  const sign = value < 0 ? '−' : '';
  switch (unit) {
    case 'm':
      return formatLength(value, units);
    case 's':
      return sign + formatTime(Math.abs(value));
    case 'm/s':
      return sign + formatSpeed(Math.abs(value), units);
    case 'share':
      return formatShare(value);
    case 'count':
      return `${Math.round(value * 10) / 10}`;
    case 'marks':
      return withUnit(Math.round(value), Math.round(value) === 1 ? 'mark' : 'marks');
  }
}

/** The same as a number for a table, with its unit: inches or centimetres, feet or metres a second. */
export function figureNumber({ unit }: Written, value: number, units: Units) {
  const [size, name] = TABLE_UNITS[unit][units];
  return { value: Math.round((value / size) * 100) / 100, unit: name };
}

const TABLE_UNITS: Record<FigureUnit, Record<Units, readonly [size: number, name: string]>> = {
  m: { imperial: [INCH_M, 'in'], metric: [0.01, 'cm'] },
  s: both([1, 's']),
  'm/s': { imperial: [FOOT_M, 'ft/s'], metric: [1, 'm/s'] },
  // No sign: spreadsheets take it for the start of a formula.
  share: both([0.01, 'percent']),
  count: both([1, '']),
  marks: both([1, 'marks'])
};

/** "10 in to 1 ft 2 in", "12 s or more", "3"; empty where no range of the figure is asked. */
export function askedRangeText({ unit, asked }: Pick<FigureScale, 'unit' | 'asked'>, units: Units) {
  if (!asked) return '';
  const [low, high] = asked;
  const text = (value: number) => formatFigure({ unit }, value, units);
  if (high === null || (unit === 'share' && high === 1)) return `${text(low)} or more`;
  if (unit === 'marks') return `${Math.round(low)} to ${text(high)}`;
  return low === high ? text(low) : `${text(low)} to ${text(high)}`;
}

/** Where a value lies beside what was asked: −1 below, 1 above, 0 inside or where no range was. */
export function figureSide({ asked }: Pick<FigureScale, 'asked'>, value: number): -1 | 0 | 1 {
  if (!asked) return 0;
  if (value < asked[0]) return -1;
  return asked[1] !== null && value > asked[1] ? 1 : 0;
}

/**
 * How far a value is beside what was asked, as the words of each try have it: a distance is one length,
 * and its miss counts from there; any other range is missed by its nearer end.
 */
function figureMiss({ asked, goal }: Pick<TaskFigure, 'asked' | 'goal'>, value: number) {
  if (!asked) return 0;
  const [low, high] = asked;
  if (goal?.kind === 'travel' && high !== null) return value - (low + high) / 2;
  if (value < low) return value - low;
  return high !== null && value > high ? value - high : 0;
}

/** A figure as it was reached, and how far off that is, as told: so that the reader's sum comes out. */
export function toldFigure(
  figure: Pick<TaskFigure, 'unit' | 'asked' | 'goal'>,
  value: number,
  units: Units
): { reached: string; miss: string } {
  const miss = figureMiss(figure, value);
  if (figure.unit !== 'm')
    return {
      reached: formatFigure(figure, value, units),
      miss: formatFigure(figure, Math.abs(miss), units)
    };
  const reached = toldWay(figure.goal ? [figure.goal] : [], value, units);
  const off_m = reached.m - toldLength(value - miss, units);
  return { reached: reached.text, miss: formatFine(Math.abs(off_m), units) };
}

/** Steps of an axis that are round for a reader, in SI. */
const STEPS: Record<FigureUnit, Record<Units, readonly number[]>> = {
  m: {
    imperial: [1, 2, 3, 6, 12, 24, 36, 60, 120, 240].map((inch) => inch * INCH_M),
    metric: [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10]
  },
  s: both([0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 60]),
  'm/s': {
    imperial: [0.1, 0.2, 0.5, 1, 2, 5, 10].map((ft_s) => ft_s * FOOT_M),
    metric: [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5]
  },
  share: both([0.1, 0.25, 0.5]),
  count: both([1, 2, 5, 10]),
  marks: both([10, 25, 50])
};

function both<T>(alike: T): Record<Units, T> {
  return { imperial: alike, metric: alike };
}

export interface FigureTick {
  value: number;
  label: string;
}

/** Even ticks from nothing on, no more than `most` of them, the widest round step that shows enough. */
export function figureTicks(
  { unit }: Written,
  [from, to]: readonly [number, number],
  units: Units,
  most: number
): FigureTick[] {
  const steps = STEPS[unit][units];
  const step = steps.find((one) => (to - from) / one <= most) ?? (to - from) / most;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const value = (first + i) * step || 0;
    const label = value === 0 ? '0' : formatFigure({ unit }, value, units);
    return { value, label: unit === 'marks' ? `${Math.round(value)}` : label };
  });
}
