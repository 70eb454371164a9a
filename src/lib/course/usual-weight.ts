import { FOOT_M, OUNCE_KG } from '../model';

/**
 * The jig that most guides tie on down to a depth, in light wind: where the trade's ranges of two sizes
 * overlap, the heavier begins in their middle. Common practice, no source.
 */
const USUAL: readonly { ounces: number; to_ft: number }[] = [
  { ounces: 1 / 4, to_ft: 8 },
  { ounces: 3 / 8, to_ft: 16 },
  { ounces: 1 / 2, to_ft: 22.5 },
  { ounces: 3 / 4, to_ft: 35 },
  { ounces: 1, to_ft: Infinity }
];

export function usualWeight_kg(depth_m: number): number {
  return USUAL[usualAt(depth_m)].ounces * OUNCE_KG;
}

/** What asks for a weight: how deep, and what wind is on the line. */
export interface DepthAndWind {
  depth_m: number;
  wind: string;
}

/** The same on a day with this wind: in a strong one a size up. Common practice, no source. */
export function usualOn_kg({ depth_m, wind }: DepthAndWind): number {
  const place = usualAt(depth_m) + (wind === 'strong' ? 1 : 0);
  return USUAL[Math.min(place, USUAL.length - 1)].ounces * OUNCE_KG;
}

/** A jig weighs a little more or less than its label. */
const LIKE_LABEL = 0.95;

/** From so many sizes over it on a jig drops like a rock and wedges. Common practice, no source. */
const HEAVY_SIZES = 2;

/** Whether guides find it heavy for this depth and wind. */
export function isOverUsual(mass_kg: number, day: DepthAndWind): boolean {
  const usual = USUAL.findIndex(({ ounces }) => ounces * OUNCE_KG >= usualOn_kg(day) - 1e-6);
  const heavy = USUAL[usual + HEAVY_SIZES];
  return heavy !== undefined && mass_kg >= LIKE_LABEL * heavy.ounces * OUNCE_KG;
}

/** Whether guides tie on a heavier one. */
export const isUnderUsual = (mass_kg: number, day: DepthAndWind) =>
  mass_kg < LIKE_LABEL * usualOn_kg(day);

/** Whether the belly that a strong wind makes takes the feel of this jig before it leaves the bottom. Common practice, no source. */
export const losesFeel = (mass_kg: number, day: DepthAndWind) =>
  day.wind === 'strong' && isUnderUsual(mass_kg, day);

function usualAt(depth_m: number): number {
  const place = USUAL.findIndex(({ to_ft }) => depth_m < to_ft * FOOT_M);
  return place === -1 ? USUAL.length - 1 : place;
}

/** Guides see 1/4 oz come up in an easy drag from here down, where the model keeps it on bottom (docs/trade-check.md, g2). */
const LIGHT_KG = 0.3 * OUNCE_KG;
const LIFTS_FROM_M = 13 * FOOT_M;

/** Whether guides see a jig lift that the model says stays down. */
export const guidesSeeItLift = (mass_kg: number, depth_m: number) =>
  mass_kg <= LIGHT_KG && depth_m >= LIFTS_FROM_M - 0.01;
