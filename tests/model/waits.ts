import { seededRandom, simulate, type Move, type ScenarioInput } from '../../src/lib/model';

/** Outfits, bottoms and moves as they come, for proving that a start is at rest. */
export interface WaitCase {
  name: string;
  scenario: ScenarioInput;
}

const BOTTOMS = ['flat', 'level profile', 'slope', 'ledge', 'stones'] as const;
const LINES = [
  { material: 'fluorocarbon', diameter_m: 0.00033 },
  { material: 'fluorocarbon', diameter_m: 0.00041 },
  { material: 'nylon', diameter_m: 0.00037 },
  { material: 'braid', diameter_m: 0.00025 }
] as const;
const WEIGHTS_KG = [0.0071, 0.0106, 0.0142, 0.0213, 0.0283];

/** The `n`-th of a seeded row of cases; the kinds of bottom and the lines take turns. */
export function waitCase(n: number): WaitCase {
  const random = seededRandom(1000 + n);
  const between = (low: number, high: number) => low + (high - low) * random();
  const kind = BOTTOMS[n % BOTTOMS.length];
  const depth_m = between(2.5, 9);
  const bait_x_m = between(12, 28);
  const line = LINES[n % LINES.length];
  const isLift = random() < 0.5;
  const duration_s = between(0.4, 2.5);
  const move: Move = isLift
    ? { kind: 'lift', from_deg: 0, to_deg: between(20, 70), duration_s }
    : { kind: 'sweep', from_deg: 0, to_deg: between(20, 80), duration_s, elevation_deg: 5 };
  return {
    name: `${n} ${kind} ${line.material}`,
    scenario: {
      water: { depth_m },
      bottom: bottomOf(kind, depth_m, bait_x_m, between),
      line,
      bait: { mass_kg: WEIGHTS_KG[Math.floor(random() * WEIGHTS_KG.length)] },
      start: { bait_x_m, slack_m: between(0, 0.6) },
      move,
      hold_s: 8
    }
  };
}

function bottomOf(
  kind: (typeof BOTTOMS)[number],
  depth_m: number,
  bait_x_m: number,
  between: (low: number, high: number) => number
): ScenarioInput['bottom'] {
  const level = -depth_m;
  switch (kind) {
    case 'flat':
      return {};
    case 'level profile':
      return { profile: { x_m: [-50, 80], z_m: [level, level] } };
    case 'slope': {
      const rise = Math.tan((between(-8, 8) * Math.PI) / 180);
      const at = (x: number) => Math.min(-0.4, level + rise * (x - bait_x_m));
      return { profile: { x_m: [0, bait_x_m, 45], z_m: [at(0), at(bait_x_m), at(45)] } };
    }
    case 'ledge': {
      const edge = bait_x_m - between(1, 6);
      const height = between(0.3, 1.5);
      return {
        profile: {
          x_m: [0, edge - 0.5, edge, 60],
          z_m: [level + height, level + height, level, level]
        }
      };
    }
    case 'stones': {
      const stones = [1.2, 2.6, -3].map((by) => ({
        x_m: bait_x_m - by + between(-0.3, 0.3),
        width_m: between(0.2, 0.6),
        height_m: between(0.08, 0.35)
      }));
      return { stones };
    }
  }
}

/** How far two runs are apart, in the figure's own unit and as a share of the first. */
interface Apart {
  by: number;
  share: number;
}
export interface Difference {
  travel_m: Apart;
  height_m: Apart;
  pull_N: Apart;
}

const WAIT_S = 60;

/** How much waiting a minute before the move changes what comes of it. */
export function differenceOf({ scenario }: WaitCase): Difference {
  const now = simulate(scenario);
  const later = simulate({
    ...scenario,
    move: {
      kind: 'sequence',
      moves: [{ kind: 'pause', duration_s: WAIT_S }, scenario.move]
    } as Move
  });
  return {
    travel_m: apart(now.travel_m, later.travel_m),
    height_m: apart(now.peak_height_m, later.peak_height_m),
    pull_N: apart(now.peak_tip_tension_N, later.peak_tip_tension_N)
  };
}

function apart(now: number, later: number): Apart {
  const by = Math.abs(later - now);
  return { by, share: by / Math.max(Math.abs(now), 1e-12) };
}

/**
 * Bounds of the proof: travel 0.5 %, height 2 % or 2 mm, pull 1 %. A travel is right to a millimetre and a
 * pull to a gram's weight, whatever share of a move that takes up nothing but slack that is.
 */
const LEAST_TRAVEL_M = 1e-3;
const LEAST_PULL_N = 0.01;

export function isWithin({ travel_m, height_m, pull_N }: Difference): boolean {
  return (
    (travel_m.share < 0.005 || travel_m.by < LEAST_TRAVEL_M) &&
    (height_m.share < 0.02 || height_m.by < 2e-3) &&
    (pull_N.share < 0.01 || pull_N.by < LEAST_PULL_N)
  );
}
