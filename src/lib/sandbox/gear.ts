import {
  FOOT_M,
  INCH_M,
  OUNCE_KG,
  parseSetup,
  POUND_FORCE_N,
  type GroundKind,
  type LineMaterialName,
  type Setup,
  type SetupInput
} from '$lib/model';
import { formatDiameter, withUnit, type Units } from '$lib/scoring';
import { profileOf, shapeOf, type Shape } from './shape';

/** What a learner chooses in plain terms; SI. */
export interface Gear {
  readonly mass_kg: number;
  readonly material: LineMaterialName;
  readonly diameter_m: number;
  readonly depth_m: number;
  /** Horizontal distance from the rod hand to the bait. */
  readonly cast_m: number;
  /** The whole rod, butt to tip. */
  readonly rod_m: number;
  readonly slack_m: number;
  readonly friction: number;
  /** Null: a plain bottom, neither stones nor weeds. */
  readonly ground: GroundKind | null;
  /** Where its stones and stems lie. */
  readonly seed: number;
  readonly shape: Shape;
  readonly snags: boolean;
  /** Positive from the angler's back. */
  readonly wind_m_s: number;
  /** Of the boat; positive towards the bait. */
  readonly drift_m_s: number;
  /** Fluorocarbon tied to the end of a braid; 0 is none. */
  readonly leader_m: number;
  readonly begin: Begin;
}

/** How a try begins: on the bottom, or at the splash with the spool open or the line held tight. */
export type Begin = 'bottom' | 'free fall' | 'tight fall';

/** Handle behind the gripping hand, m: what a rod's length on the label has and its reach has not. */
const BUTT_M = 0.38;
/** Height of the gripping hand above the water on a boat's deck, m. */
const HAND_M = 1.2;

export const WEIGHTS_KG = [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1].map((oz) => oz * OUNCE_KG);

export const RODS_M = [6.5, 7, 7.25, 7.5, 7.75].map((ft) => ft * FOOT_M);

/** So near to what is offered it is the same: some are kept in round meters. */
const SAME_PART = 0.02;

/** What is offered, with the value that is chosen among it. */
export function offeredWith(offered: readonly number[], chosen: number | null): number[] {
  if (chosen === null) return [...offered];
  const others = offered.filter((one) => Math.abs(one - chosen) > SAME_PART * chosen);
  return [...others, chosen].sort((a, b) => a - b);
}

export interface LineChoice {
  readonly material: LineMaterialName;
  readonly strength_lb: number;
  readonly diameter_m: number;
}

/** Diameters that go with a strength: common practice, makers differ by a tenth and more. */
export const LINES: readonly LineChoice[] = [
  ...lines('fluorocarbon', [
    [8, 0.23],
    [10, 0.26],
    [12, 0.28],
    [15, 0.33],
    [17, 0.35],
    [20, 0.37]
  ]),
  ...lines('nylon', [
    [8, 0.26],
    [10, 0.28],
    [12, 0.32],
    [17, 0.38],
    [20, 0.43]
  ]),
  ...lines('braid', [
    [20, 0.23],
    [30, 0.28],
    [40, 0.32],
    [50, 0.36]
  ])
];

function lines(material: LineMaterialName, table: [lb: number, mm: number][]): LineChoice[] {
  return table.map(([strength_lb, mm]) => ({ material, strength_lb, diameter_m: mm / 1000 }));
}

/** What a material is called on the water. */
export const MATERIAL_NAMES: Record<LineMaterialName, string> = {
  fluorocarbon: 'fluorocarbon',
  nylon: 'mono',
  braid: 'braid'
};

/**
 * Diameter of a line of this strength, from the table: between its lines, and beyond them, the
 * cross-section goes with the strength.
 */
export function diameterFor(material: LineMaterialName, strength_lb: number): number {
  const table = LINES.filter((one) => one.material === material);
  const above = table.find((one) => one.strength_lb >= strength_lb) ?? table[table.length - 1];
  const below = [...table].reverse().find((one) => one.strength_lb <= strength_lb) ?? table[0];
  const area = ({ diameter_m }: LineChoice) => diameter_m ** 2;
  if (above === below || below.strength_lb > above.strength_lb) {
    return Math.sqrt((area(above) * strength_lb) / above.strength_lb);
  }
  const part = (strength_lb - below.strength_lb) / (above.strength_lb - below.strength_lb);
  return Math.sqrt(area(below) + part * (area(above) - area(below)));
}

/** A line by the strength that goes with its diameter: its own where the table has it, else between. */
export function namedLine({ material, diameter_m }: Omit<LineChoice, 'strength_lb'>): LineChoice {
  const table = LINES.filter((one) => one.material === material);
  const known = table.find((one) => isLine(one, { material, diameter_m }));
  if (known) return known;
  const last = table[table.length - 1];
  const most_lb = Math.ceil((last.strength_lb * diameter_m ** 2) / last.diameter_m ** 2) + 1;
  const strengths = Array.from({ length: most_lb }, (_, i) => i + 1);
  const off = (lb: number) => Math.abs(diameterFor(material, lb) - diameter_m);
  const strength_lb = strengths.reduce((best, lb) => (off(lb) < off(best) ? lb : best));
  return { material, strength_lb, diameter_m };
}

/** An afternoon on Quillmere, an invented lake, with the first rod of an invented locker. */
export const FIRST_GEAR: Gear = {
  mass_kg: (5 / 8) * OUNCE_KG,
  material: 'fluorocarbon',
  diameter_m: 0.28e-3,
  depth_m: 18 * FOOT_M,
  cast_m: 70 * FOOT_M,
  rod_m: 7 * FOOT_M,
  slack_m: 6 * INCH_M,
  friction: 0.4,
  ground: null,
  seed: 1,
  shape: 'flat',
  snags: false,
  wind_m_s: 0,
  drift_m_s: 0,
  leader_m: 0,
  begin: 'bottom'
};

/** A usual leader, and its line, m. */
export const LEADER_M = 6 * FOOT_M;
const LEADER_DIAMETER_M = 0.34e-3;

/** The setup for this gear; what `base` says besides (stones, temperature) stays. Throws ScenarioError. */
export function setupOf(gear: Gear, base?: Setup): Setup {
  const input: SetupInput = {
    ...base,
    water: { ...base?.water, depth_m: gear.depth_m },
    bottom: bottomOf(gear, base),
    wind_m_s: gear.wind_m_s,
    drift_m_s: gear.drift_m_s,
    line: base && isLineOf(base, gear) ? base.line : lineOf(gear),
    bait: { ...base?.bait, mass_kg: gear.mass_kg },
    rod: {
      pivot_height_m: HAND_M,
      ...base?.rod,
      length_m: gear.rod_m - BUTT_M
    },
    start: startOf(gear)
  };
  return parseSetup(input);
}

function bottomOf(gear: Gear, base?: Setup): SetupInput['bottom'] {
  const { friction, ground, seed, snags } = gear;
  const given = base?.bottom.profile;
  return {
    stones: base?.bottom.stones,
    profile: gear.shape === 'given' ? given : profileOf(gear.shape, gear),
    ground: ground ? { kind: ground, seed } : undefined,
    friction,
    snags
  };
}

/** A line that was not changed stays as it is: one of one's own is not in the table. */
const isLineOf = ({ line }: Setup, gear: Gear) =>
  isLine(line, gear) && (line.leader?.length_m ?? 0) === gear.leader_m;

/** The line parts at the strength on its label. */
function lineOf({ material, diameter_m, leader_m }: Gear): SetupInput['line'] {
  const choice = LINES.find((line) => isLine(line, { material, diameter_m }));
  return {
    material,
    diameter_m,
    breaking_load_N: choice && choice.strength_lb * POUND_FORCE_N,
    leader:
      leader_m > 0
        ? { material: 'fluorocarbon', diameter_m: LEADER_DIAMETER_M, length_m: leader_m }
        : undefined
  };
}

function startOf({ begin, cast_m, slack_m }: Gear): SetupInput['start'] {
  if (begin === 'bottom') return { bait_x_m: cast_m, line: 'equilibrium', slack_m };
  const spool = begin === 'free fall' ? 'free' : 'closed';
  return { bait_x_m: cast_m, line: 'splash', spool, slack_m };
}

function beginOf({ line, spool }: Setup['start']): Begin {
  if (line !== 'splash') return 'bottom';
  return spool === 'free' ? 'free fall' : 'tight fall';
}

type LineSize = Pick<LineChoice, 'material' | 'diameter_m'>;

export function isLine(a: LineSize, b: LineSize): boolean {
  return a.material === b.material && Math.abs(a.diameter_m - b.diameter_m) < 1e-6;
}

/** The gear that a setup stands for. */
export function gearOf(setup: Setup): Gear {
  return {
    mass_kg: setup.bait.mass_kg,
    material: setup.line.material,
    diameter_m: setup.line.diameter_m,
    depth_m: setup.water.depth_m,
    cast_m: setup.start.bait_x_m,
    rod_m: setup.rod.length_m + BUTT_M,
    slack_m: setup.start.slack_m ?? FIRST_GEAR.slack_m,
    friction: setup.bottom.friction,
    ground: setup.bottom.ground?.kind ?? null,
    seed: setup.bottom.ground?.seed ?? FIRST_GEAR.seed,
    shape: shapeOf(setup),
    snags: setup.bottom.snags,
    wind_m_s: setup.wind_m_s,
    drift_m_s: setup.drift_m_s,
    leader_m: setup.line.leader?.length_m ?? 0,
    begin: beginOf(setup.start)
  };
}

/** 12 lb fluorocarbon, or 0.29 mm fluorocarbon. */
export function lineName({ material, strength_lb, diameter_m }: LineChoice, units: Units): string {
  const size =
    units === 'imperial' ? withUnit(strength_lb, 'lb') : formatDiameter(diameter_m, units);
  return `${size} ${MATERIAL_NAMES[material]}`;
}

/** A slider's ends and step, m, in steps that are round for the learner. */
export interface Range {
  readonly least: number;
  readonly most: number;
  readonly step: number;
}

/** Friction of the bait on the bottom: mud to rough rock. */
export const FRICTION: Range = { least: 0.1, most: 0.8, step: 0.05 };

export const WIND: Range = { least: -9, most: 9, step: 1 };
export const DRIFT: Range = { least: -0.6, most: 0.6, step: 0.1 };

export const RANGES: Record<Units, Record<'depth_m' | 'cast_m' | 'slack_m', Range>> = {
  imperial: {
    depth_m: { least: 4 * FOOT_M, most: 50 * FOOT_M, step: FOOT_M },
    cast_m: { least: 30 * FOOT_M, most: 150 * FOOT_M, step: 2 * FOOT_M },
    slack_m: { least: 0, most: 36 * INCH_M, step: INCH_M }
  },
  metric: {
    depth_m: { least: 1.5, most: 15, step: 0.5 },
    cast_m: { least: 10, most: 46, step: 1 },
    slack_m: { least: 0, most: 0.9, step: 0.02 }
  }
};
