import { daySetup } from '$lib/compute/jobs/day-setup';
import { parseSetup } from '$lib/model';
import { gearOf, lineName, namedLine } from '$lib/sandbox/gear';
import { formatLength, formatWeight, type Units } from '$lib/scoring';
import type { CardWater } from './choices';

/** "5/8 oz, small trailer, 12 lb fluorocarbon, 7 ft rod": what a card's figures are made with where no outfit is chosen. */
export function practiceGearText(water: CardWater, units: Units): string {
  const { deep_m: depth_m, bottom: ground, mass_kg, out_m, temperature_C } = water;
  const setup = parseSetup(daySetup({ depth_m, ground, mass_kg, out_m, temperature_C }));
  const gear = gearOf(setup);
  return [
    formatWeight(gear.mass_kg, units),
    // The trailer of every lesson's jig.
    'small trailer',
    lineName(namedLine(gear), units),
    `${formatLength(gear.rod_m, units)} rod`
  ].join(', ');
}
