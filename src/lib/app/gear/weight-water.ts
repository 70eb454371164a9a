import { waterWith } from '$lib/course/lessons/fathomley';
import { LONGEST_COUNT_S } from '$lib/course/plan';
import type { WeightWanted } from '$lib/course/weight-chart';
import { FOOT_M, parseSetup, type Setup } from '$lib/model';
import { inUnits, type Units } from '$lib/scoring';
import { withOutfitGear, type OutfitGear } from '$lib/wire';

/** Waters that the chart is made for, as they are said in either units. */
export const CHART_DEPTHS = [
  { feet: 10, says: '{10 ft|3 m}' },
  { feet: 20, says: '{20 ft|6 m}' },
  { feet: 30, says: '{30 ft|9 m}' }
] as const;
export const CHART_WINDS = [
  { m_s: 0, says: 'calm' },
  { m_s: 6, says: '{15 mph|6 m/s}' }
] as const;
/** Smooth ones. Not mud: what lets a jig go there is the mud, not its weight. */
export const CHART_BEDS = ['sand', 'clay'] as const;

export interface ChartWater {
  feet: number;
  wind_m_s: number;
  bed: (typeof CHART_BEDS)[number];
}

const ALL: readonly ChartWater[] = CHART_DEPTHS.flatMap(({ feet }) =>
  CHART_WINDS.flatMap(({ m_s }) => CHART_BEDS.map((bed) => ({ feet, wind_m_s: m_s, bed })))
);
/** From one water to the next by so many of them: another depth each time, and every one before one comes again. */
const STRIDE = 7;

export const FIRST_WATER: ChartWater = { feet: 20, wind_m_s: 0, bed: 'sand' };

export function waterAfter({ feet, wind_m_s, bed }: ChartWater): ChartWater {
  const at = ALL.findIndex(
    (one) => one.feet === feet && one.wind_m_s === wind_m_s && one.bed === bed
  );
  return ALL[(at + STRIDE) % ALL.length];
}

/** "20 ft, calm, sand" */
export function waterWords({ feet, wind_m_s, bed }: ChartWater, units: Units): string {
  const depth = CHART_DEPTHS.find((one) => one.feet === feet);
  const wind = CHART_WINDS.find((one) => one.m_s === wind_m_s);
  return [depth?.says, wind?.says, bed].map((says) => inUnits(says ?? '', units)).join(', ');
}

/** That water with the learner's gear, or with the lessons' own. Throws ScenarioError where the line cannot reach. */
export function chartSetup({ feet, wind_m_s, bed }: ChartWater, gear?: OutfitGear): Setup {
  const water = parseSetup(
    waterWith({
      depth_m: feet * FOOT_M,
      bottom: { ground: { kind: bed, seed: 11 } },
      more: { wind_m_s }
    })
  );
  return gear ? parseSetup(withOutfitGear(water, gear)) : water;
}

/** What is asked for in a water: a second for each two feet, up to the count that a plan allows, and two feet of drag in four. */
export function wantedAt({ feet, wind_m_s }: Pick<ChartWater, 'feet' | 'wind_m_s'>): WeightWanted {
  return {
    within_s: Math.min(feet / 2 + 2, LONGEST_COUNT_S),
    drag_s: 4,
    depth_m: feet * FOOT_M,
    wind: wind_m_s > 0 ? 'strong' : 'calm'
  };
}
