import { FOOT_M, INCH_M, OUNCE_KG, type SetupInput } from '../../model';
import type { Random } from '../seeded-random';

export function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)];
}

export function shuffled<T>(random: Random, from: readonly T[]): T[] {
  const list = [...from];
  for (let i = list.length - 1; i > 0; i--) {
    const k = Math.floor(random() * (i + 1));
    [list[i], list[k]] = [list[k], list[i]];
  }
  return list;
}

/** Different members of a list, in its order. */
export function several<T>(random: Random, from: readonly T[], count: number): T[] {
  const chosen = new Set(
    shuffled(
      random,
      from.map((_, i) => i)
    ).slice(0, count)
  );
  return from.filter((_, i) => chosen.has(i));
}

/** Hand to tip of a 7 ft rod, m, and the hand's height above the water, m. */
const REACH_M = 1.75;
const HAND_M = 1.2;
/** Fast tip of a medium-heavy rod, N/m. */
const TIP_N_M = 20;

export const LINES = {
  fluorocarbon: { material: 'fluorocarbon', diameter_m: 0.0003 },
  nylon: { material: 'nylon', diameter_m: 0.00033 },
  braid: { material: 'braid', diameter_m: 0.00023 }
} as const;

/** Weights that go with a depth, oz: the trade's table. */
const WEIGHTS_OZ: readonly [under_ft: number, oz: readonly number[]][] = [
  [12, [1 / 4, 3 / 8, 1 / 2]],
  [20, [3 / 8, 1 / 2, 5 / 8]],
  [30, [1 / 2, 3 / 4, 1]]
];

export const oz = (ounces: number) => ounces * OUNCE_KG;
export const ft = (feet: number) => feet * FOOT_M;
export const inch = (inches: number) => inches * INCH_M;

interface Wanted {
  depth_m?: number;
  mass_kg?: number;
  cast_m?: number;
  slack_m?: number;
}

/** Water and gear as a boat has them; what is `wanted` stands. */
export function drawGear(random: Random, wanted: Wanted = {}): SetupInput & { start: object } {
  const depth_m = wanted.depth_m ?? ft(pick(random, [8, 10, 12, 15, 18, 22]));
  const weights = WEIGHTS_OZ.find(([under]) => depth_m <= ft(under)) ?? WEIGHTS_OZ[2];
  const mass_kg = wanted.mass_kg ?? oz(pick(random, weights[1]));
  const cast_m = wanted.cast_m ?? ft(pick(random, [35, 45, 55, 65]));
  return {
    water: { depth_m, temperature_C: 15 },
    bottom: { friction: pick(random, [0.3, 0.4]) },
    line: { ...LINES[pick(random, ['fluorocarbon', 'fluorocarbon', 'nylon', 'braid'] as const)] },
    bait: { mass_kg, drag_area_m2: 7e-4 },
    rod: { length_m: REACH_M, pivot_height_m: HAND_M, tip_stiffness_N_per_m: TIP_N_M },
    start: { bait_x_m: cast_m, slack_m: wanted.slack_m ?? inch(pick(random, [1, 2, 3])) }
  };
}

/** "In {depth} of water a {weight} jig lies {depth} out." */
export function placeWords({ water, bait, start }: SetupInput): string {
  return `In ${depth(water.depth_m)} of water a jig of ${weight(bait.mass_kg)} lies ${depth(start.bait_x_m)} out.`;
}

export const length = (m: number) => `{length:${m.toFixed(4)}}`;
export const depth = (m: number) => `{depth:${m.toFixed(4)}}`;
export const weight = (kg: number) => `{weight:${kg.toFixed(6)}}`;
export const time = (s: number) => `{time:${s.toFixed(2)}}`;
