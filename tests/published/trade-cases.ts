import {
  clockHourToDeg,
  degToRad,
  FOOT_M,
  INCH_M,
  OUNCE_KG,
  simulate,
  type Move,
  type ScenarioInput
} from '../../src/lib/model';

/**
 * What practitioners say they see, beside the model over what nobody knows. Common practice, no
 * source: 13 ft of water, casts up to 40 yd, a 7 ft 4 in heavy rod, 15-lb fluorocarbon (0.33 mm),
 * football-head jigs with a trailer. Nothing in the model is set from these.
 */

/** One draw of what is unknown. */
export interface TradeDraw {
  slack_m: number;
  dragArea_m2: number;
  /** Share of planing; the columns of the table fix it or take `planing` of 0.4. */
  planing: number;
  angleError_deg: number;
  rod_m: number;
  cast_m: number;
  /** 0 … 1, for whatever else a case leaves open. */
  pace: number;
  other: number;
}

/** How an angle was held or read, where it is not as it was said. Degrees; 0 for level. */
export interface Holding {
  /** Where the rod starts. */
  from_deg: number;
  /** Where it ends, by hours said. */
  ends_deg: (hours: number) => number;
  /** How far the hand goes towards the bait as it lifts, m: the pivot follows the arm. */
  reaches_m: number;
}

export const AS_SAID: Holding = {
  from_deg: 0,
  ends_deg: (hours) => clockHourToDeg(9 + hours),
  reaches_m: 0
};

/** Middle drag area of a jig with a trailer, m²; draws go from half to twice of it. */
export const DRAG_AREA_M2 = 7e-4;
export const DEPTH_M = 13 * FOOT_M;
/** Trailers that plane, at most (docs/planing.md). */
export const MOST_PLANING = 0.4;

/** Each unknown spread evenly over its range (Halton's sequence: the same for every row). */
export function drawsOf(count: number, casts_m: readonly [number, number] = [18, 36]): TradeDraw[] {
  return Array.from({ length: count }, (_, i) => {
    const share = (base: number) => halton(i + 1, base);
    return {
      slack_m: 0.5 * share(2),
      dragArea_m2: DRAG_AREA_M2 * 2 ** (2 * share(3) - 1),
      angleError_deg: 20 * share(5) - 10,
      rod_m: 1.6 + 0.3 * share(7),
      cast_m: between(casts_m[0], casts_m[1], share(11)),
      pace: share(13),
      other: share(17),
      planing: MOST_PLANING * share(19)
    };
  });
}

function halton(index: number, base: number): number {
  let share = 1;
  let sum = 0;
  for (let i = index; i > 0; i = Math.floor(i / base)) {
    share /= base;
    sum += share * (i % base);
  }
  return sum;
}

function run(u: TradeDraw, ounces: number, move: Move, depth_m = DEPTH_M) {
  const scenario: ScenarioInput = {
    water: { depth_m },
    line: { material: 'fluorocarbon', diameter_m: 0.00033 },
    bait: { mass_kg: ounces * OUNCE_KG, drag_area_m2: u.dragArea_m2, lift_to_drag: u.planing },
    rod: { length_m: u.rod_m },
    start: { bait_x_m: u.cast_m, slack_m: u.slack_m },
    move,
    hold_s: 5
  };
  return simulate(scenario);
}

function between(low: number, high: number, share: number): number {
  return low + (high - low) * share;
}

/** Pivot of the rod hand above the water, m: the model's own default. */
const PIVOT_HEIGHT_M = 1.2;
/** Points of the tip's path where the hand moves too: more change nothing. */
const PATH_POINTS = 41;

/** Raised in half a second to a second and a half, from nine o'clock unless it is held otherwise. */
export function lift(u: TradeDraw, hours: number, holding = AS_SAID): Move {
  const to_deg = holding.ends_deg(hours) + u.angleError_deg;
  const duration_s = between(0.5, 1.5, u.pace);
  const { from_deg, reaches_m } = holding;
  if (reaches_m === 0) return { kind: 'lift', from_deg, to_deg, duration_s };
  const shares = Array.from({ length: PATH_POINTS }, (_, i) => i / (PATH_POINTS - 1));
  const eased = shares.map((s) => s * s * s * (10 + s * (6 * s - 15)));
  const angles = eased.map((s) => degToRad(from_deg + (to_deg - from_deg) * s));
  return {
    kind: 'tip_path',
    t_s: shares.map((s) => s * duration_s),
    x_m: angles.map((rad, i) => u.rod_m * Math.cos(rad) + reaches_m * eased[i]),
    z_m: angles.map((rad) => PIVOT_HEIGHT_M + u.rod_m * Math.sin(rad))
  };
}

/** Travel of a 1/2 oz jig, ft, that is lifted by so many hours. */
export function liftedTravel_ft(u: TradeDraw, hours: number, holding = AS_SAID): number {
  return feet(run(u, 0.5, lift(u, hours, holding)).travel_m);
}

/** A low rod swung far enough for its tip to come back by `tip_m`. */
export function sweep(u: TradeDraw, tip_m: number, duration_s: number): Move {
  const share = Math.min(tip_m / u.rod_m, 1);
  return {
    kind: 'sweep',
    from_deg: 0,
    to_deg: (Math.acos(1 - share) * 180) / Math.PI,
    duration_s,
    elevation_deg: 0
  };
}

export function threeHops(u: TradeDraw): Move {
  const hop = (from_deg: number) => ({
    kind: 'lift' as const,
    from_deg,
    to_deg: from_deg + 10,
    duration_s: between(0.12, 0.35, u.pace)
  });
  const pause = { kind: 'pause' as const, duration_s: between(0.5, 1, u.other) };
  return { kind: 'sequence', moves: [hop(30), pause, hop(40), pause, hop(50)] };
}

/** The sweeps of row e, 4–6 ft of tip, done in a third to two thirds of a second, or in 5–8 s. */
export const sweptTip_m = (u: TradeDraw) => between(4, 6, u.other) * FOOT_M;
export const fastSweep = (u: TradeDraw) => sweep(u, sweptTip_m(u), between(1 / 3, 2 / 3, u.pace));
export const slowSweep = (u: TradeDraw) => sweep(u, sweptTip_m(u), between(5, 8, u.pace));
const easySweep_in = (u: TradeDraw, depths_ft: readonly [number, number]) =>
  inches(
    run(u, 0.25, sweep(u, 0.9, between(1.2, 2, u.pace)), between(...depths_ft, u.other) * FOOT_M)
      .peak_height_m
  );
const fastHeight_in = (u: TradeDraw, ounces: number) =>
  inches(run(u, ounces, fastSweep(u)).peak_height_m);

const feet = (m: number) => m / FOOT_M;
const inches = (m: number) => m / INCH_M;
const MORE = Infinity;
/** "About" is read as to a tenth either way. */
const about = (value: number): [number, number] => [0.9 * value, 1.1 * value];

export interface TradeCase {
  id: string;
  what: string;
  /** Lowest and highest that is said. */
  said: [number, number];
  unit: string;
  of: (u: TradeDraw) => number;
}

function row(
  id: string,
  what: string,
  said: [number, number],
  unit: string,
  of: TradeCase['of']
): TradeCase {
  return { id, what, said, unit, of };
}

export const TRADE_CASES: readonly TradeCase[] = [
  row('a1', 'travel, 1/2 oz, lift of 1 h', about(1), 'ft', (u) => liftedTravel_ft(u, 1)),
  row('a2', 'travel, 1/2 oz, lift of 2 h', [2, 2.5], 'ft', (u) => liftedTravel_ft(u, 2)),
  row('a3', 'travel, 1/2 oz, lift of 3 h', about(6), 'ft', (u) => liftedTravel_ft(u, 3)),
  row('b', 'travel of 3/4 oz less travel of 1/4 oz, lift of 2 h', [-0.1, 0.1], 'ft', (u) =>
    feet(run(u, 0.75, lift(u, 2)).travel_m - run(u, 0.25, lift(u, 2)).travel_m)
  ),
  row('c1', 'height of 1/4 oz over height of 1/2 oz, lift of 3 h', [1, MORE], '×', (u) =>
    ratio(u, 0.25, 0.5)
  ),
  row('c2', 'height of 1/2 oz over height of 3/4 oz, lift of 3 h', [1.3, MORE], '×', (u) =>
    ratio(u, 0.5, 0.75)
  ),
  row('d', 'travel, 1/2 oz, three hops from ten to eleven', [1.5, 3], 'ft', (u) =>
    feet(run(u, 0.5, threeHops(u)).travel_m)
  ),
  row('e', 'travel, 1/2 oz, low sweep with the tip moved 4–6 ft', about(6), 'ft', (u) =>
    feet(run(u, 0.5, sweep(u, sweptTip_m(u), between(1, 2, u.pace))).travel_m)
  ),
  row('f1', 'height, 3/4 oz, fast sweep', about(6), 'in', (u) => fastHeight_in(u, 0.75)),
  row('f2', 'height, 1/2 oz, fast sweep', [12, 18], 'in', (u) => fastHeight_in(u, 0.5)),
  row(
    'f3',
    'height, 1/4 oz less height, 1/2 oz, fast sweep',
    [0, MORE],
    'in',
    (u) => fastHeight_in(u, 0.25) - fastHeight_in(u, 0.5)
  ),
  row('f4', 'height, 1/2 oz, slow sweep', [0, 0.5], 'in', (u) =>
    inches(run(u, 0.5, slowSweep(u)).peak_height_m)
  ),
  row('g1', 'height, 1/4 oz, easy sweep, 7–8 ft deep', [0, 1], 'in', (u) =>
    easySweep_in(u, [7, 8])
  ),
  row('g2', 'height, 1/4 oz, easy sweep, 13–20 ft deep', [4, MORE], 'in', (u) =>
    easySweep_in(u, [13, 20])
  )
];

/** Heights below this are taken as this, m: a ratio of two baits that both stay down says nothing. */
const LEAST_HEIGHT_M = 0.005;

function ratio(u: TradeDraw, light: number, heavy: number): number {
  const height = (ounces: number) =>
    Math.max(run(u, ounces, lift(u, 3)).peak_height_m, LEAST_HEIGHT_M);
  return height(light) / height(heavy);
}

/** Middle, 5–95 % and the share of draws that lie in what is said. */
export interface Spread {
  median: number;
  low: number;
  high: number;
  inside: number;
}

export function spreadOf(values: readonly number[], [least, most]: TradeCase['said']): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))];
  const inside = values.filter((x) => least <= x && x <= most).length / values.length;
  return { median: at(0.5), low: at(0.05), high: at(0.95), inside };
}

/** Share of draws that lie in what is said of one, two and three hours, and of all three at once. */
export function jointFit(draws: readonly TradeDraw[], holding = AS_SAID) {
  const said = TRADE_CASES.slice(0, 3).map((one) => one.said);
  const all = draws.map((u) => said.map((_, i) => liftedTravel_ft(u, i + 1, holding)));
  const isIn = (x: number, i: number) => said[i][0] <= x && x <= said[i][1];
  return {
    hours: said.map((range, i) =>
      spreadOf(
        all.map((one) => one[i]),
        range
      )
    ),
    joint: all.filter((one) => one.every(isIn)).length / all.length
  };
}
