import type { Result } from '../../model';
import { contactWhileMoving } from '../../scoring';
import type { MeasureName } from './measures';

/** What each measure is of a run, SI. */
export const MEASURED_BY: Readonly<Record<MeasureName, (result: Result) => number>> = {
  travel_m: ({ travel_m }) => travel_m,
  peak_height_m: ({ peak_height_m }) => peak_height_m,
  contact: contactWhileMoving,
  fall_s: fallTime,
  airborne_s: ({ airborne_s }) => airborne_s,
  pull_N: ({ peak_tip_tension_N }) => peak_tip_tension_N
};

/** From the splash to the bottom, s; infinite for a bait that has not come down. */
export function fallTime({ events }: Result): number {
  return events.find(({ kind }) => kind === 'bottom')?.t_s ?? Infinity;
}
