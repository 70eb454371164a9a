import { seededRandom } from './random';

/**
 * Kinds of bottom: what they do to a bait, as parameters of one model. Sliding friction: gravel 0.40,
 * sand 0.25–0.3, silt and mud 0.20 (NAVFAC DM-7.02 for steel on soil, as tabled in *Soil Properties
 * and their Correlations*); lead on wet rock and clay, breakout loads, stems and the sizes of stones
 * are common practice, no source. A jig also digs in, which is what `plough_N` stands for.
 */
export interface Ground {
  readonly friction: number;
  /** Force with which the bottom holds a bait that has rested on it, N. */
  readonly breakout_N: number;
  /** Extra resistance while the bait is drawn along, whatever its load, N. */
  readonly plough_N: number;
  readonly stones?: Scatter & { readonly height_m: Span; readonly width_m: Span };
  readonly stems?: Scatter & {
    readonly height_m: Span;
    readonly stiffness_N_per_m: Span;
    readonly slip_N: Span;
  };
  /** Unevenness too fine to be a stone: wavelength, m, and share of the friction it adds and takes. */
  readonly grain: { readonly length_m: number; readonly share: number };
}

type Span = readonly [number, number];
interface Scatter {
  /** From the middle of one to the middle of the next, m. */
  readonly spacing_m: Span;
}

export interface Stone {
  /** Middle of the stone, m from the pivot. */
  x_m: number;
  width_m: number;
  height_m: number;
}

/** What of a scenario decides where stones and stems stand. */
interface Site {
  readonly bottom: {
    readonly ground?: { kind: GroundKind; seed: number };
    readonly stones: Stone[];
  };
  readonly start: { readonly bait_x_m: number };
}

/** A springy stalk: bends as the bait draws on it, and lets it slip off at `slip_N`. */
export interface Stem {
  x_m: number;
  height_m: number;
  stiffness_N_per_m: number;
  slip_N: number;
}

const NONE = { breakout_N: 0, plough_N: 0 };

export const GROUNDS = {
  mud: { friction: 0.2, breakout_N: 0.35, plough_N: 0.08, grain: { length_m: 0.08, share: 0.05 } },
  clay: { friction: 0.5, breakout_N: 0.12, plough_N: 0.02, grain: { length_m: 0.05, share: 0.02 } },
  sand: { ...NONE, friction: 0.3, grain: { length_m: 0.0015, share: 0.1 } },
  gravel: {
    ...NONE,
    friction: 0.4,
    grain: { length_m: 0.004, share: 0.15 },
    stones: { spacing_m: [0.03, 0.08], width_m: [0.02, 0.05], height_m: [0.004, 0.012] }
  },
  'chunk rock': {
    ...NONE,
    friction: 0.45,
    grain: { length_m: 0.01, share: 0.1 },
    stones: { spacing_m: [0.18, 0.45], width_m: [0.1, 0.3], height_m: [0.04, 0.14] }
  },
  boulders: {
    ...NONE,
    friction: 0.45,
    grain: { length_m: 0.01, share: 0.1 },
    stones: { spacing_m: [0.9, 1.8], width_m: [0.5, 1], height_m: [0.2, 0.4] }
  },
  brush: {
    ...NONE,
    friction: 0.3,
    grain: { length_m: 0.02, share: 0.1 },
    stems: {
      spacing_m: [0.25, 0.6],
      height_m: [0.2, 0.5],
      stiffness_N_per_m: [4, 10],
      slip_N: [0.6, 1.6]
    }
  },
  stump: {
    ...NONE,
    friction: 0.35,
    grain: { length_m: 0.03, share: 0.05 },
    stones: { spacing_m: [1.6, 2.4], width_m: [0.3, 0.4], height_m: [0.16, 0.24] }
  },
  grass: {
    friction: 0.25,
    breakout_N: 0,
    plough_N: 0.03,
    grain: { length_m: 0.02, share: 0.05 },
    stems: {
      spacing_m: [0.04, 0.1],
      height_m: [0.1, 0.3],
      stiffness_N_per_m: [0.8, 2],
      slip_N: [0.1, 0.3]
    }
  },
  // Mussels, whole and broken: coarser than gravel, lower than rock. Common practice, no source.
  'shell bed': {
    ...NONE,
    friction: 0.45,
    grain: { length_m: 0.006, share: 0.15 },
    stones: { spacing_m: [0.05, 0.12], width_m: [0.03, 0.08], height_m: [0.008, 0.024] }
  }
} as const satisfies Record<string, Ground>;

export type GroundKind = keyof typeof GROUNDS;
export const GROUND_KINDS = Object.keys(GROUNDS) as GroundKind[];

/** Friction of a bottom that nobody has described. */
const PLAIN: Ground = { ...NONE, friction: 0.4, grain: { length_m: 0.01, share: 0 } };

/** How far from where the bait starts stones and stems are laid, towards the angler and away, m. */
const LAID_TOWARDS_M = 6;
const LAID_AWAY_M = 0.6;
/** Nothing stands where the bait starts, m. */
const CLEAR_START_M = 0.06;

export function groundOf(bottom: { ground?: { kind: GroundKind } }): Ground {
  return bottom.ground ? GROUNDS[bottom.ground.kind] : PLAIN;
}

/** All stones: those of the scenario first, then those that belong to its kind of bottom. */
export function stonesOf(setup: Site): Stone[] {
  const { stones } = groundOf(setup.bottom);
  if (!stones) return setup.bottom.stones;
  const laid = scattered(setup, stones.spacing_m, 1, (x_m, random) => ({
    x_m,
    width_m: within(stones.width_m, random()),
    height_m: within(stones.height_m, random())
  }));
  const clear = laid.filter(
    ({ x_m, width_m }) => Math.abs(x_m - setup.start.bait_x_m) > CLEAR_START_M + width_m / 2
  );
  return [...setup.bottom.stones, ...clear];
}

export function stemsOf(setup: Site): Stem[] {
  const { stems } = groundOf(setup.bottom);
  if (!stems) return [];
  return scattered(setup, stems.spacing_m, 2, (x_m, random) => ({
    x_m,
    height_m: within(stems.height_m, random()),
    stiffness_N_per_m: within(stems.stiffness_N_per_m, random()),
    slip_N: within(stems.slip_N, random())
  })).filter(({ x_m }) => Math.abs(x_m - setup.start.bait_x_m) > CLEAR_START_M);
}

function scattered<T>(
  setup: Site,
  spacing_m: Span,
  stream: number,
  make: (x_m: number, random: () => number) => T
): T[] {
  const random = seededRandom((setup.bottom.ground?.seed ?? 0) * 7919 + stream);
  const start = setup.start.bait_x_m;
  const side = Math.sign(start);
  const made: T[] = [];
  const first = Math.abs(start) + LAID_AWAY_M;
  const last = Math.max(0.5, Math.abs(start) - LAID_TOWARDS_M);
  for (let x = first; x > last; x -= within(spacing_m, random())) made.push(make(side * x, random));
  return made;
}

function within([low, high]: Span, share: number): number {
  return low + share * (high - low);
}
