import { FOOT_M, INCH_M, OUNCE_KG, type SetupInput } from '../../model';
import type { Random } from '../../model';
import { saidOut, saidWeight } from './said';

export function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)];
}

/** The member at this share of the list, from 0 to 1. */
export function dealt<T>(share: number, from: readonly T[]): T {
  return from[Math.floor(share * from.length)];
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

/** How much water a skirted jig pushes aside, m²: bare, and with a trailer. From memory; nobody has published one. */
export const BARE_JIG_M2 = 4e-4;
export const SMALL_TRAILER_M2 = 7e-4;
export const BIG_TRAILER_M2 = 13e-4;

/** Lines by what is on the spool's label, with the diameter that goes with it (makers differ by a tenth). */
const DRAWN_LINES = {
  fluorocarbon: { material: 'fluorocarbon', diameter_m: 0.00028 },
  nylon: { material: 'nylon', diameter_m: 0.00032 },
  braid: { material: 'braid', diameter_m: 0.00023 }
} as const;
type DrawnLine = keyof typeof DRAWN_LINES;
const LINE_NAMES = ['fluorocarbon', 'nylon', 'braid'] as const;
const SAID_LINES: Readonly<Record<DrawnLine, string>> = {
  fluorocarbon: '{12-lb|0.28 mm} fluorocarbon',
  nylon: '{12-lb|0.32 mm} mono',
  braid: '{20-lb|0.23 mm} braid'
};

export const oz = (ounces: number) => ounces * OUNCE_KG;
export const ft = (feet: number) => feet * FOOT_M;
export const inch = (inches: number) => inches * INCH_M;

/** Weights that go with a depth, oz: the trade's table. */
const WEIGHTS_OZ: readonly [under_ft: number, oz: readonly number[]][] = [
  [12, [1 / 4, 3 / 8, 1 / 2]],
  [20, [3 / 8, 1 / 2, 5 / 8]],
  [60, [1 / 2, 3 / 4, 1]]
];

/**
 * Boats as they lie: three at each depth, one with each of its weights. They are few, so that a thousand
 * questions can be checked in minutes, and what goes with a depth is dealt in other rounds than its
 * weights, so that no value gives another away.
 */
const DEPTHS_FT = [8, 10, 12, 15, 18, 22, 26, 30];
const CASTS_FT = [35, 45, 55, 65];
const SLACKS_IN = [1, 2, 3];
const FRICTIONS = [0.3, 0.4];
/** Less far out than this many times its depth a jig is nearly under the boat. Common practice, no source. */
const LEAST_OUT = 1.5;
const OUTFITS = DEPTHS_FT.flatMap((feet, d) =>
  [0, 1, 2].map((heavy) => ({
    feet,
    ounces: weightsFor(feet)[heavy],
    line: LINE_NAMES[(d + 2 * heavy) % LINE_NAMES.length],
    cast_ft: castFor(feet, CASTS_FT[(d + heavy) % CASTS_FT.length]),
    slack_in: SLACKS_IN[(d + heavy) % SLACKS_IN.length],
    friction: FRICTIONS[(d + heavy) % FRICTIONS.length]
  }))
);

function castFor(feet: number, cast_ft: number): number {
  return CASTS_FT.find((one) => one >= Math.max(cast_ft, LEAST_OUT * feet)) ?? cast_ft;
}

/** Whether the jig sits nearer than deep water is fished: only asked about where near is the point. */
export function isCloseIn({ water, start }: SetupInput): boolean {
  return start.bait_x_m < LEAST_OUT * water.depth_m;
}

function weightsFor(feet: number): readonly number[] {
  return (WEIGHTS_OZ.find(([under]) => feet <= under) ?? WEIGHTS_OZ[2])[1];
}

/** Nobody fishes the lightest in deep water, or the heaviest in shallow. */
export const isFished = (ounces: number, feet: number) =>
  (ounces > 1 / 4 || feet <= 20) && (ounces < 1 || feet >= 12);

interface Wanted {
  depth_m?: number;
  mass_kg?: number;
  cast_m?: number;
  slack_m?: number;
  line?: DrawnLine;
}

/** Water and gear as a boat has them; what is `wanted` stands. */
export function drawGear(random: Random, wanted: Wanted = {}): SetupInput & { start: object } {
  const outfit = pick(random, OUTFITS);
  return {
    water: { depth_m: wanted.depth_m ?? ft(outfit.feet), temperature_C: 15 },
    bottom: { friction: outfit.friction },
    line: { ...DRAWN_LINES[wanted.line ?? outfit.line] },
    bait: { mass_kg: wanted.mass_kg ?? oz(outfit.ounces), drag_area_m2: SMALL_TRAILER_M2 },
    rod: { length_m: REACH_M, pivot_height_m: HAND_M, tip_stiffness_N_per_m: TIP_N_M },
    start: {
      bait_x_m: wanted.cast_m ?? ft(outfit.cast_ft),
      slack_m: wanted.slack_m ?? inch(outfit.slack_in)
    }
  };
}

/** Trailers as questions offer them: nobody ties on such a jig without one. */
export const TIED_ON = [
  { says: 'a small trailer', drag_area_m2: SMALL_TRAILER_M2 },
  { says: 'a big trailer', drag_area_m2: BIG_TRAILER_M2 }
] as const;

const FALL_DEPTHS_FT = [8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34];
const FALL_CAST_FT = 40;

/** A jig about to fall: depth, one of its weights, a trailer and a line, each drawn by itself. */
export function drawFall(random: Random, depths_ft: readonly number[] = FALL_DEPTHS_FT) {
  const feet = pick(random, depths_ft);
  const trailer = pick(random, TIED_ON);
  const wanted = {
    depth_m: ft(feet),
    mass_kg: oz(pick(random, weightsFor(feet))),
    cast_m: ft(FALL_CAST_FT),
    line: pick(random, LINE_NAMES)
  };
  const gear = drawGear(() => 0, wanted);
  return {
    feet,
    trailer,
    setup: { ...gear, bait: { ...gear.bait, drag_area_m2: trailer.drag_area_m2 } }
  };
}

/** What is on the spool: 12-lb mono, or 0.32 mm mono. */
export function saidLine(setup: SetupInput): string {
  return SAID_LINES[setup.line.material as DrawnLine];
}

/** Depth, jig, line and how far out, in two short sentences. */
export function placeWords(setup: SetupInput): string {
  const { water, bait, start } = setup;
  return `${saidOut(water.depth_m)} of water. A ${saidWeight(bait.mass_kg)} jig sits ${saidOut(start.bait_x_m)} out on ${saidLine(setup)}.`;
}

/** What happened, converted and exact to what a hand can use. */
export const lengthToken = (m: number) => `{length:${m.toFixed(4)}}`;
export const timeToken = (s: number) => `{time:${s.toFixed(2)}}`;
