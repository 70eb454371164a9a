import { FOOT_M } from '$lib/model';
import type { Units } from '$lib/scoring';

/** What the learner says the bait did, before it is shown. */
export interface Guess {
  readonly travel_m: number;
  readonly lifted: boolean;
}

/** A number that is typed: inches or centimetres, as a hand would say it. */
export const GUESS_UNIT: Record<Units, { readonly name: string; readonly m: number }> = {
  imperial: { name: 'in', m: FOOT_M / 12 },
  metric: { name: 'cm', m: 0.01 }
};

/** Nobody means more than this, m. */
const MOST_M = 15;

/** A typed travel in m, or what is wrong with it in words. */
export function readTravel(text: string, units: Units): number | string {
  const { name, m } = GUESS_UNIT[units];
  const typed = text.trim().replace('−', '-').replace(',', '.');
  const value = Number(typed);
  if (typed === '' || Number.isNaN(value)) return `Give a number of ${longName(units)}.`;
  const most = Math.round(MOST_M / m);
  if (Math.abs(value) > most) return `At most ${most} ${name}.`;
  return value * m;
}

export function longName(units: Units): string {
  return units === 'imperial' ? 'inches' : 'centimetres';
}
