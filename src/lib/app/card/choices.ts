import { firstWeight } from '$lib/course/plan';
import { FOOT_M, type GroundKind } from '$lib/model';
import type { Units } from '$lib/scoring';
import {
  waterNow,
  type CardRow,
  type CardSize,
  type DayPlan,
  type Settings,
  type WaterNow
} from '$lib/wire';

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

/** What is looked up in a boat; the rest may be added, as long as it is one page. */
export const ROWS_OF: Record<CardSize, readonly CardRow[]> = {
  letter: ['moves', 'limits', 'falls', 'hand', 'bites', 'snag'],
  a4: ['moves', 'limits', 'falls', 'hand', 'bites', 'snag'],
  a6: ['moves', 'limits', 'falls', 'hand']
};

/** The water of a card. */
export interface CardWater extends Omit<WaterNow, 'depth_m' | 'ground'> {
  shallow_m: number;
  deep_m: number;
  bottom: GroundKind;
  /** Of the jig where there is no outfit of one's own; left out for that of the lessons. */
  mass_kg?: number;
}

/** A step of depth that is round in these units, m. */
const STEP_M: Record<Units, number> = { imperial: FOOT_M, metric: 0.5 };
/** A water of which half is less has a card for it and for twice as deep, m. */
const LEAST_HALF_M = 3 * FOOT_M - 0.01;

/** As a day was planned or the water is now, down to its depth and in half of it. */
export function cardWater(day: DayPlan | null, settings: Settings): CardWater {
  const { depth_m, ground, ...others } = day?.asked ?? waterNow(settings);
  const { out_m, temperature_C, wind } = others;
  const step_m = STEP_M[settings.units];
  const half_m = Math.round(depth_m / 2 / step_m) * step_m;
  const [shallow_m, deep_m] = half_m < LEAST_HALF_M ? [depth_m, 2 * depth_m] : [half_m, depth_m];
  return {
    ...{ shallow_m, deep_m, out_m, temperature_C, wind },
    bottom: ground,
    ...(day && { mass_kg: day.weights[firstWeight(day.weights, day.asked)].mass_kg })
  };
}
