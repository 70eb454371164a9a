import type { Result, Scenario } from '../../model';
import { contactIn } from '../../scoring';
import type { MeasureName } from './measures';

/**
 * What each measure is of a run, SI. Apart from what a page says of measures: contact is looked for on
 * the very bottom, and most pages that name a measure have no water to load for that.
 */
export const MEASURED_BY: Readonly<
  Record<MeasureName, (result: Result, scenario: Scenario) => number>
> = {
  travel_m: ({ travel_m }) => travel_m,
  peak_height_m: ({ peak_height_m }) => peak_height_m,
  contact: (result, scenario) => contactIn(scenario, result),
  fall_s: fallTime,
  airborne_s: ({ airborne_s }) => airborne_s,
  pull_N: ({ peak_tip_tension_N }) => peak_tip_tension_N
};

/** From the splash to the bottom, s; infinite for a bait that has not come down. */
export function fallTime({ events }: Result): number {
  return events.find(({ kind }) => kind === 'bottom')?.t_s ?? Infinity;
}
