import {
  clockHourToDeg,
  FOOT_M,
  INCH_M,
  OUNCE_KG,
  simulate,
  type Move,
  type ScenarioInput
} from '../../src/lib/model';

/**
 * What practitioners say they see, beside the model's band over what nobody knows. Common practice, no
 * source: 13 ft of water, casts up to 40 yd, a 7 ft 4 in heavy rod, 15-lb fluorocarbon (0.33 mm),
 * football-head jigs with a trailer. Nothing in the model is set from these.
 */
/** Lowest and highest. */
export type Range = [number, number];

export interface TradeRow {
  id: string;
  what: string;
  trade: Range;
  unit: string;
  median: number;
  band: Range;
}

interface Unknowns {
  slack_m: number;
  dragArea_m2: number;
  angleError_deg: number;
  rod_m: number;
  cast_m: number;
  /** 0 … 1, for whatever else a case leaves open. */
  pace: number;
  other: number;
}

/** Middle drag area of a jig with a trailer, m²; the band goes from half to twice of it. */
const DRAG_AREA_M2 = 7e-4;
const DEPTH_M = 13 * FOOT_M;

/** Enough for a steady median; the ends of the band come from the corners. */
const SPREAD = 49;
const CORNERS = 32;

/** The same for every case: each unknown spread evenly (Halton's sequence), and all its extremes. */
const SAMPLE: readonly Unknowns[] = [
  ...Array.from({ length: SPREAD }, (_, i) => unknownsAt((base) => halton(i + 1, base))),
  ...Array.from({ length: CORNERS }, (_, i) =>
    unknownsAt((base, bit) => (bit < 5 ? (i >> bit) & 1 : halton(i + 1, base)))
  )
];

function unknownsAt(share: (base: number, index: number) => number): Unknowns {
  return {
    slack_m: 0.5 * share(2, 0),
    dragArea_m2: DRAG_AREA_M2 * 2 ** (2 * share(3, 1) - 1),
    angleError_deg: 20 * share(5, 2) - 10,
    rod_m: 1.6 + 0.3 * share(7, 3),
    cast_m: 18 + 9 * share(11, 4),
    pace: share(13, 5),
    other: share(17, 6)
  };
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

function run(u: Unknowns, ounces: number, move: Move, depth_m = DEPTH_M) {
  const scenario: ScenarioInput = {
    water: { depth_m },
    line: { material: 'fluorocarbon', diameter_m: 0.00033 },
    bait: { mass_kg: ounces * OUNCE_KG, drag_area_m2: u.dragArea_m2 },
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

/** Raised from nine o'clock, in half a second to a second and a half. */
function lift(u: Unknowns, hours: number): Move {
  const to_deg = clockHourToDeg(9 + hours) + u.angleError_deg;
  return { kind: 'lift', from_deg: 0, to_deg, duration_s: between(0.5, 1.5, u.pace) };
}

/** A low rod swung far enough for its tip to come back by `tip_m`. */
function sweep(u: Unknowns, tip_m: number, duration_s: number): Move {
  const share = Math.min(tip_m / u.rod_m, 1);
  return {
    kind: 'sweep',
    from_deg: 0,
    to_deg: (Math.acos(1 - share) * 180) / Math.PI,
    duration_s,
    elevation_deg: 0
  };
}

function threeHops(u: Unknowns): Move {
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
const sweptTip_m = (u: Unknowns) => between(4, 6, u.other) * FOOT_M;
const fastSweep = (u: Unknowns) => sweep(u, sweptTip_m(u), between(1 / 3, 2 / 3, u.pace));
const slowSweep = (u: Unknowns) => sweep(u, sweptTip_m(u), between(5, 8, u.pace));

function row(
  id: string,
  what: string,
  trade: Range,
  unit: string,
  value: (u: Unknowns) => number
): TradeRow {
  const values = SAMPLE.map(value).sort((a, b) => a - b);
  return {
    id,
    what,
    trade,
    unit,
    median: values[values.length >> 1],
    band: [values[0], values[values.length - 1]]
  };
}

const feet = (m: number) => m / FOOT_M;
const inches = (m: number) => m / INCH_M;
const MORE = Infinity;
/** "About" is read as to a tenth either way. */
const about = (value: number): Range => [0.9 * value, 1.1 * value];

/** Every row; a minute's worth of runs, done once. */
export function tradeRows(): TradeRow[] {
  return [
    ...[
      { hours: 1, trade: about(1) },
      { hours: 2, trade: [2, 2.5] as Range },
      { hours: 3, trade: about(6) }
    ].map(({ hours, trade }) =>
      row(`a${hours}`, `travel, 1/2 oz, lift of ${hours} h`, trade, 'ft', (u) =>
        feet(run(u, 0.5, lift(u, hours)).travel_m)
      )
    ),
    row('b', 'travel of 3/4 oz less travel of 1/4 oz, lift of 2 h', [0, 0], 'ft', (u) =>
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
    row('f1', 'height, 3/4 oz, fast sweep', about(6), 'in', (u) =>
      inches(run(u, 0.75, fastSweep(u)).peak_height_m)
    ),
    row('f2', 'height, 1/2 oz, fast sweep', [12, 18], 'in', (u) =>
      inches(run(u, 0.5, fastSweep(u)).peak_height_m)
    ),
    row('f3', 'height, 1/4 oz less height, 1/2 oz, fast sweep', [0, MORE], 'in', (u) =>
      inches(run(u, 0.25, fastSweep(u)).peak_height_m - run(u, 0.5, fastSweep(u)).peak_height_m)
    ),
    ...[0.25, 0.5, 0.75].map((ounces) =>
      row(`f4 ${ounces}`, `height, ${ounces} oz, slow sweep`, [0, 0.5], 'in', (u) =>
        inches(run(u, ounces, slowSweep(u)).peak_height_m)
      )
    ),
    row('g1', 'height, 1/4 oz, easy sweep, 7–8 ft deep', [0, 1], 'in', (u) =>
      inches(
        run(u, 0.25, sweep(u, 0.9, between(1.2, 2, u.pace)), between(7, 8, u.other) * FOOT_M)
          .peak_height_m
      )
    ),
    row('g2', 'height, 1/4 oz, easy sweep, 13–20 ft deep', [4, MORE], 'in', (u) =>
      inches(
        run(u, 0.25, sweep(u, 0.9, between(1.2, 2, u.pace)), between(13, 20, u.other) * FOOT_M)
          .peak_height_m
      )
    )
  ];
}

/** Heights below this are taken as this, m: a ratio of two baits that both stay down says nothing. */
const LEAST_HEIGHT_M = 0.005;

function ratio(u: Unknowns, light: number, heavy: number): number {
  const height = (ounces: number) =>
    Math.max(run(u, ounces, lift(u, 3)).peak_height_m, LEAST_HEIGHT_M);
  return height(light) / height(heavy);
}

export function overlaps({ trade, band }: TradeRow): boolean {
  return trade[0] <= band[1] && trade[1] >= band[0];
}
