import {
  formatAsked,
  formatFine,
  formatLength,
  formatWay,
  toldLength,
  type Units
} from './display';
import { drawnOf } from './goals';
import type { GoalGrade } from './grade';
import { PASS_MARK, TOTAL_MARKS } from './pass-mark';

/** A way as the table has it: finer, or just under its limit, where it rounds to that and lies outside. */
export function besideLimits({ goal }: GoalGrade, way_m: number, units: Units): string {
  const { travel_m } = drawnOf([goal]);
  return travel_m ? formatWay(way_m, travel_m, units) : formatLength(way_m, units);
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
function offBy(travel: GoalGrade, target_m: number, units: Units): string {
  const { value } = travel;
  const target = toldLength(target_m, units);
  const way = besideLimits(travel, value, units);
  const isFiner = way !== formatLength(value, units) && way === formatFine(value, units);
  if (isFiner) return formatFine(Math.abs(value - target), units);
  const told_m = toldLength(value, units) - target;
  return formatLength(toldLength(Math.abs(told_m === 0 ? value - target_m : told_m), units), units);
}
