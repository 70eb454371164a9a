import { ft } from '../draw';
import { figuresOf } from '../figures';
import type { ShownRun } from '../../lesson';
import { nominalOf, shownScenarioOf } from '../measure';
import { MEASURES } from '../measures';

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

/** A lift of an hour in no more than this is quick, s: of such a one guides see more height, by so many times. Common practice, no source. */
const QUICK_S = 1;
const QUICK_SEEN = 1.4;

/** A lift, and the time each hour of it takes, s. */
export interface Lifted {
  run: ShownRun;
  hour_s: number;
}

export const isQuick = ({ hour_s }: Pick<Lifted, 'hour_s'>) => hour_s <= QUICK_S;

/** How high guides see it go, m. */
export const heightSeen_m = ({ run, hour_s }: Lifted) =>
  nominalOf(run, 'peak_height_m') * (isQuick({ hour_s }) ? QUICK_SEEN : 1);

/** Whether guides, who see a quick lift go higher, would put these in the model's order, and surely. */
export function isHeightSeenAlike(lifts: readonly Lifted[]): boolean {
  const { apart } = MEASURES.peak_height_m;
  const seen_m = [...lifts]
    .sort((a, b) => nominalOf(b.run, 'peak_height_m') - nominalOf(a.run, 'peak_height_m'))
    .map(heightSeen_m);
  return seen_m.slice(1).every((low_m, i) => seen_m[i] - low_m > apart);
}

/** Said where some are quick and others are not; nothing where guides see all of them alike. */
export const quickSaid = (lifts: readonly Pick<Lifted, 'hour_s'>[]) =>
  lifts.some(isQuick) && !lifts.every(isQuick)
    ? ' On a quick lift guides see more height than the model.'
    : '';
