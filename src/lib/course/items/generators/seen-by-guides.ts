import { ft } from '../draw';
import { figuresOf } from '../figures';
import type { ShownRun } from '../../lesson';
import { shownScenarioOf } from '../measure';

/** How far guides see a lift from nine bring the jig by each hour, ft; down at eight the rod points along the line. Common practice, no source. */
const GUIDES_FT: Readonly<Record<number, number>> = { 8: 0, 9: 0, 10: 1, 11: 2.25, 12: 6 };

/** By a half hour half of that hour's. */
const byHour_ft = (hour: number) => (GUIDES_FT[Math.floor(hour)] + GUIDES_FT[Math.ceil(hour)]) / 2;

/** How far guides see a lift between these hours bring the jig, ft. */
export const guides_ft = (from: number, to: number) => byHour_ft(to) - byHour_ft(from);

/** The least that guides see of a lift, of the model's travel and of its tip's. Common practice, no source. */
const LEAST_SEEN = 0.5;

export interface Seen {
  run: ShownRun;
  guides_ft: number;
  isLift: boolean;
}

/** How far it comes, m: as the model has it, and as guides see it, by the hour and by half. */
export function travelsSeen_m({ run, guides_ft: seen_ft, isLift }: Seen): readonly number[] {
  const { travel_m, tip_m } = figuresOf(shownScenarioOf(run));
  return [travel_m, ft(seen_ft), isLift ? LEAST_SEEN * Math.min(travel_m, tip_m) : travel_m];
}
