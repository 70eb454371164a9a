import {
  formatAsked,
  formatFine,
  formatLength,
  formatWay,
  fineLength,
  toldLength,
  type Units
} from './display';
import { drawnOf, type Goal } from './goals';
import type { GoalGrade } from './grade';
import { PASS_MARK, TOTAL_MARKS } from './pass-mark';

/** A length as it is told, and how much that is, m: what is told beside it is reckoned from there. */
export interface ToldLength {
  text: string;
  m: number;
}

/** A way as the table has it: finer, or just under its limit, where it rounds to that and lies outside. */
export function toldWay(goals: readonly Goal[], way_m: number, units: Units): ToldLength {
  const { travel_m } = drawnOf(goals);
  const plain = formatLength(way_m, units);
  const text = travel_m ? formatWay(way_m, travel_m, units) : plain;
  const isFiner = text !== plain && text === formatFine(way_m, units);
  return { text, m: isFiner ? fineLength(way_m, units) : toldLength(way_m, units) };
}

export function besideLimits({ goal }: GoalGrade, way_m: number, units: Units): string {
  return toldWay([goal], way_m, units).text;
}

/** A try at the very edge of the band, with full marks all the same, is not called wrong. */
export function besideAsked(travel: GoalGrade, units: Units): string {
  const { goal, value, met } = travel;
  if (goal.kind !== 'travel') return '';
  const { target_m, band_m } = goal;
  if (met === 1) {
    const isExact = formatLength(value, units) === formatAsked(target_m, units);
    return `: on the mark${isExact ? '' : `, give or take ${formatLength(band_m, units)}`}`;
  }
  const side = value > target_m ? 'far' : 'short';
  const band = formatLength(band_m, units);
  // What passes is the limit and a hair: told otherwise than what does not.
  if (met * TOTAL_MARKS >= PASS_MARK) return `: a hair over ${band} too ${side}`;
  const off = offBy(travel, target_m, units);
  return `: ${off === band ? `just over ${band}` : off} too ${side}`;
}

/** By how much it is off, of what is told of it: so that the reader's sum comes out. */
function offBy({ goal, value }: GoalGrade, target_m: number, units: Units): string {
  const off_m = toldWay([goal], value, units).m - toldLength(target_m, units);
  // Told as the very length that was asked, it is off by what rounding took.
  if (off_m === 0) return formatLength(Math.abs(value - target_m), units);
  return formatFine(Math.abs(off_m), units);
}
