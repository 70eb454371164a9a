import { FOOT_M, INCH_M, OUNCE_KG, type SetupInput } from '../../model';
import type { Random } from '../../model';

export function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)];
}

/** Fisher and Yates. */
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

export const DRAWN_LINES = {
  fluorocarbon: { material: 'fluorocarbon', diameter_m: 0.0003 },
  nylon: { material: 'nylon', diameter_m: 0.00033 },
  braid: { material: 'braid', diameter_m: 0.00023 }
} as const;

export const oz = (ounces: number) => ounces * OUNCE_KG;
export const ft = (feet: number) => feet * FOOT_M;
export const inch = (inches: number) => inches * INCH_M;

/** Weights that go with a depth, oz: the trade's table. */
const WEIGHTS_OZ: readonly [under_ft: number, oz: readonly number[]][] = [
  [12, [1 / 4, 3 / 8, 1 / 2]],
  [20, [3 / 8, 1 / 2, 5 / 8]],
  [30, [1 / 2, 3 / 4, 1]]
];

/** A depth, and which of its three weights, which line, how long a cast and how much slack go with it. */
interface Outfit {
  feet: number;
  heavy: 0 | 1 | 2;
  line: keyof typeof DRAWN_LINES;
  cast_ft: number;
  slack_in: number;
  friction: number;
}

/**
 * Boats as they lie: two at each depth. They are few, so that all questions that a generator can ask
 * can be checked, and each value goes with different others, so that none gives another away.
 */
const OUTFITS: readonly Outfit[] = [
  { feet: 8, heavy: 0, line: 'nylon', cast_ft: 35, slack_in: 1, friction: 0.3 },
  { feet: 8, heavy: 2, line: 'fluorocarbon', cast_ft: 55, slack_in: 2, friction: 0.4 },
  { feet: 10, heavy: 1, line: 'fluorocarbon', cast_ft: 45, slack_in: 3, friction: 0.4 },
  { feet: 10, heavy: 2, line: 'braid', cast_ft: 65, slack_in: 1, friction: 0.3 },
  { feet: 12, heavy: 0, line: 'braid', cast_ft: 55, slack_in: 2, friction: 0.4 },
  { feet: 12, heavy: 1, line: 'fluorocarbon', cast_ft: 35, slack_in: 3, friction: 0.3 },
  { feet: 15, heavy: 2, line: 'nylon', cast_ft: 65, slack_in: 2, friction: 0.3 },
  { feet: 15, heavy: 0, line: 'fluorocarbon', cast_ft: 45, slack_in: 1, friction: 0.4 },
  { feet: 18, heavy: 1, line: 'fluorocarbon', cast_ft: 55, slack_in: 3, friction: 0.3 },
  { feet: 18, heavy: 2, line: 'braid', cast_ft: 45, slack_in: 2, friction: 0.4 },
  { feet: 22, heavy: 0, line: 'fluorocarbon', cast_ft: 65, slack_in: 1, friction: 0.4 },
  { feet: 22, heavy: 1, line: 'nylon', cast_ft: 35, slack_in: 3, friction: 0.3 }
];

interface Wanted {
  depth_m?: number;
  mass_kg?: number;
  cast_m?: number;
  slack_m?: number;
}

/** Water and gear as a boat has them; what is `wanted` stands. */
export function drawGear(random: Random, wanted: Wanted = {}): SetupInput & { start: object } {
  const outfit = pick(random, OUTFITS);
  const depth_m = wanted.depth_m ?? ft(outfit.feet);
  const weights = WEIGHTS_OZ.find(([under]) => depth_m <= ft(under)) ?? WEIGHTS_OZ[2];
  return {
    water: { depth_m, temperature_C: 15 },
    bottom: { friction: outfit.friction },
    line: { ...DRAWN_LINES[outfit.line] },
    bait: { mass_kg: wanted.mass_kg ?? oz(weights[1][outfit.heavy]), drag_area_m2: 7e-4 },
    rod: { length_m: REACH_M, pivot_height_m: HAND_M, tip_stiffness_N_per_m: TIP_N_M },
    start: {
      bait_x_m: wanted.cast_m ?? ft(outfit.cast_ft),
      slack_m: wanted.slack_m ?? inch(outfit.slack_in)
    }
  };
}

/** "In {depth} of water a {weight} jig lies {depth} out." */
export function placeWords({ water, bait, start }: SetupInput): string {
  return `In ${depth(water.depth_m)} of water a jig of ${weightToken(bait.mass_kg)} lies ${depth(start.bait_x_m)} out.`;
}

export const lengthToken = (m: number) => `{length:${m.toFixed(4)}}`;
export const depth = (m: number) => `{depth:${m.toFixed(4)}}`;
export const weightToken = (kg: number) => `{weight:${kg.toFixed(6)}}`;
export const timeToken = (s: number) => `{time:${s.toFixed(2)}}`;
