import { FISH_CHOICES, LIGHT_CHOICES, nameOf, windText } from '$lib/app/gear';
import { formatDepth, formatTemperature } from '$lib/scoring';
import type { DayPlan, PlanAsked } from '$lib/wire';

/** "20 ft deep, sand, 55 °F, light wind, 7 mph, clouds, fish: slow" */
export function dayWater(asked: PlanAsked, units: DayPlan['units']): string {
  const { depth_m, ground, temperature_C, wind, light, fish } = asked;
  return [
    `${formatDepth(depth_m, units)} deep`,
    ground,
    formatTemperature(temperature_C, units),
    windText(wind, units),
    nameOf(LIGHT_CHOICES, light),
    `fish: ${nameOf(FISH_CHOICES, fish)}`
  ].join(', ');
}
