import { fahrenheitToCelsius, FOOT_M } from '$lib/model';
import { formatDepth, formatTemperature, type Units } from '$lib/scoring';
import type { FishMood, Light, Wind } from '$lib/wire';

/** Choices of a day's water, by their places in the list, so that each is round in either units. */
const DEPTHS: Record<Units, readonly number[]> = {
  imperial: [5, 8, 10, 12, 15, 18, 20, 22, 25, 30, 35, 40].map((feet) => feet * FOOT_M),
  metric: [1.5, 2.5, 3, 3.5, 4.5, 5.5, 6, 6.5, 7.5, 9, 10.5, 12]
};
const OUTS: Record<Units, readonly number[]> = {
  imperial: [30, 40, 50, 60, 75, 90].map((feet) => feet * FOOT_M),
  metric: [9, 12, 15, 18, 23, 27]
};
const TEMPERATURES: Record<Units, readonly number[]> = {
  imperial: [40, 45, 50, 55, 60, 65, 70, 75, 80, 85].map(fahrenheitToCelsius),
  metric: [4, 7, 10, 13, 16, 18, 21, 24, 27, 29]
};

export type WaterChoice = 'depth' | 'out' | 'temperature';

/** What is offered: SI values with their words. */
export function waterChoices(of: WaterChoice, units: Units): { value: number; says: string }[] {
  const offered = { depth: DEPTHS, out: OUTS, temperature: TEMPERATURES }[of][units];
  const says = of === 'temperature' ? formatTemperature : formatDepth;
  return offered.map((value) => ({ value, says: says(value, units) }));
}

export const WIND_CHOICES: readonly { value: Wind; name: string }[] = [
  { value: 'calm', name: 'Calm' },
  { value: 'breeze', name: 'Light wind' },
  { value: 'strong', name: 'Strong wind' }
];
export const FISH_CHOICES: readonly { value: FishMood; name: string }[] = [
  { value: 'unknown', name: 'Not known' },
  { value: 'slow', name: 'Slow' },
  { value: 'active', name: 'Active' }
];
export const LIGHT_CHOICES: readonly { value: Light; name: string }[] = [
  { value: 'bright', name: 'Bright sun' },
  { value: 'clouds', name: 'Clouds' },
  { value: 'low', name: 'Dawn or dusk' }
];

/** "light wind": an option as it stands in a sentence. */
export function nameOf<T extends string>(
  options: readonly { value: T; name: string }[],
  value: T
): string {
  return options.find((option) => option.value === value)?.name.toLowerCase() ?? value;
}
