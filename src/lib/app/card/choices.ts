import { waterChoices } from '$lib/app/gear';
import { firstWeight } from '$lib/course/plan';
import type { GroundKind } from '$lib/model';
import type { Units } from '$lib/scoring';
import type { CardRow, CardSize, DayPlan } from '$lib/wire';

export const SIZES: readonly { value: CardSize; name: string }[] = [
  { value: 'letter', name: 'Letter' },
  { value: 'a4', name: 'A4' },
  { value: 'a6', name: 'A6' }
];

export const ROW_NAMES: Record<CardRow, string> = {
  moves: 'Rod to jig',
  limits: 'Stays down',
  falls: 'Count it down',
  hand: 'Your hand',
  bites: 'Bite or bottom',
  bottoms: 'Bottoms by feel',
  snag: 'Snagged',
  fish: 'Fish care',
  cautions: 'What can hurt'
};

/** What fits one page of each size at a print that is read at arm’s length. */
export const ROWS_OF: Record<CardSize, readonly CardRow[]> = {
  letter: ['moves', 'limits', 'falls', 'hand', 'bites', 'bottoms', 'snag', 'fish', 'cautions'],
  a4: ['moves', 'limits', 'falls', 'hand', 'bites', 'bottoms', 'snag', 'fish', 'cautions'],
  a6: ['moves', 'limits', 'falls', 'hand']
};

/** The water of a card, most of it by the place of a choice among those offered. */
export interface CardWater {
  shallow: number;
  deep: number;
  out: number;
  temperature: number;
  bottom: GroundKind;
  /** Of the jig where there is no outfit of one's own; left out for that of the lessons. */
  mass_kg?: number;
}

export const waterOffered = (units: Units) => ({
  depths: waterChoices('depth', units),
  outs: waterChoices('out', units),
  temperatures: waterChoices('temperature', units)
});

/** As a day was planned, down to its depth and in half of it; else as it comes. */
export function cardWater(day: DayPlan | null, units: Units): CardWater {
  if (!day) return { shallow: 4, deep: 8, out: 3, temperature: 4, bottom: 'sand' };
  const { depths, outs, temperatures } = waterOffered(units);
  const { depth_m, out_m, temperature_C, ground } = day.asked;
  const { mass_kg } = day.weights[firstWeight(day.weights)];
  const [half, whole] = [nearest(depths, depth_m / 2), nearest(depths, depth_m)];
  const [shallow, deep] = half < whole ? [half, whole] : [whole, whole + 1];
  return {
    ...{ shallow, deep, out: nearest(outs, out_m) },
    temperature: nearest(temperatures, temperature_C),
    bottom: ground,
    mass_kg
  };
}

function nearest(offered: readonly { value: number }[], wanted: number): number {
  const off = offered.map(({ value }) => Math.abs(value - wanted));
  return off.indexOf(Math.min(...off));
}
