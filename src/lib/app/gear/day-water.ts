import { fahrenheitToCelsius, FOOT_M } from '$lib/model';
import { WIND_M_S } from '$lib/compute/jobs/day-setup';
import {
  formatDepth,
  formatTemperature,
  formatWind,
  MPH_M_S,
  typedLength_m,
  type Units
} from '$lib/scoring';
import type { FishMood, Light, Wind } from '$lib/wire';

/** A length of a day's water that is typed: what is offered, and what is taken, round in either units. */
interface TypedWater {
  name: string;
  offered: Record<Units, readonly number[]>;
  bounds: Record<Units, readonly [least: number, most: number]>;
}
const feet = (...lengths: number[]) => lengths.map((one) => one * FOOT_M);

/** Shallower a jig is not dragged, deeper no bass is fished so; a cast is a rod's length to a long one. */
const TYPED = {
  depth: {
    name: 'Depth',
    offered: {
      imperial: feet(5, 8, 10, 12, 15, 18, 20, 22, 25, 30, 35, 40),
      metric: [1.5, 2.5, 3, 3.5, 4.5, 5.5, 6, 6.5, 7.5, 9, 10.5, 12]
    },
    bounds: { imperial: [3 * FOOT_M, 60 * FOOT_M], metric: [1, 18] }
  },
  out: {
    name: 'Cast',
    offered: { imperial: feet(30, 40, 50, 60, 75, 90), metric: [9, 12, 15, 18, 23, 27] },
    bounds: { imperial: [20 * FOOT_M, 120 * FOOT_M], metric: [6, 36] }
  }
} satisfies Record<string, TypedWater>;
export type TypedWaterName = keyof typeof TYPED;

/** What is offered of it, m. */
export const offeredWater = (of: TypedWaterName, units: Units): readonly number[] =>
  TYPED[of].offered[units];

/** A hair past a bound is the bound, as it is written down rounded, m. */
const HAIR_M = 0.005;

/** Metres, or which field must be what. */
export function typedWater(
  of: TypedWaterName,
  text: string,
  units: Units,
  name: string = TYPED[of].name
): number | { fault: string } {
  const [least, most] = TYPED[of].bounds[units];
  const m = typedLength_m(text, units === 'metric' ? 'm' : 'ft');
  if (m !== null && m >= least - HAIR_M && m <= most + HAIR_M) return m;
  const [from, to] = [least, most].map((one) => formatDepth(one, units));
  return { fault: `${name} must be ${from} to ${to}.` };
}

/** To the degree, as a graph reads it: at a season's border five of them are another season. */
const TEMPERATURES: Record<Units, readonly number[]> = {
  imperial: Array.from({ length: 56 }, (_, i) => fahrenheitToCelsius(35 + i)),
  metric: Array.from({ length: 31 }, (_, i) => 2 + i)
};

/** Temperatures that are offered, with the one of now among them; in °C, with their words. */
export function temperatureChoices(now_C: number, units: Units): { value: number; says: string }[] {
  const words = (value: number) => formatTemperature(value, units);
  const others = TEMPERATURES[units].filter((one) => words(one) !== words(now_C));
  return [...others, now_C].sort((a, b) => a - b).map((value) => ({ value, says: words(value) }));
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

/** "light wind, 7 mph", "no wind" */
export function windText(wind: Wind, units: Units): string {
  if (wind === 'calm') return 'no wind';
  const m_s = WIND_M_S[wind];
  const pace =
    units === 'metric' ? formatWind(m_s, units) : `${Math.round(m_s / MPH_M_S)}\u00a0mph`;
  return `${nameOf(WIND_CHOICES, wind)}, ${pace}`;
}
