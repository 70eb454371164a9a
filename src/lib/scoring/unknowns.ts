import { raisedMove, type Scenario } from '../model';

/**
 * What nobody on the water knows: how the skirt flutters, a factor of two either way in drag area, how
 * much slack was left, from none to twice what was meant (bait-model band, docs/model.md), and how much
 * the bait planes (docs/planing.md).
 */
const DRAG_AREA_FACTORS = [0.5, 2];
const SLACK_FACTORS = [0, 2];
const MOST_PLANING = 0.4;

/** What a fit finds of an outfit, by the names it has in docs/fit.md. */
export const UNKNOWN_NAMES = [
  'reach_m',
  'elevation_deg',
  'slack_m',
  'drag_area_m2',
  'lift_to_drag'
] as const;
export type UnknownName = (typeof UNKNOWN_NAMES)[number];
export type OwnValues = { readonly [Name in UnknownName]?: number };

/**
 * What an outfit's own tests leave open: the values found, and pairs of places about them, each pair at
 * the 90 % ends of one independent direction. A figure's half width is the root of the sum of squares
 * over the pairs, as for any sum of independent errors.
 */
export interface OwnSpread {
  readonly middle: OwnValues;
  readonly ends: readonly OwnValues[];
}

/** What of a scenario nobody knows; where slack is what is asked, only what the water does to the bait. */
export type Unknowns = 'slack and drag' | 'drag' | OwnSpread;

/** The scenario as it may really have been: every corner of what is unknown, in the same order for each. */
export function cornersOf(scenario: Scenario, unknowns: Unknowns = 'slack and drag'): Scenario[] {
  if (typeof unknowns === 'object') {
    const { middle, ends } = unknowns;
    return ends.map((end) => movedBy(scenario, middle, end));
  }
  const { bait, start } = scenario;
  const { slack_m } = start;
  const starts =
    slack_m === undefined || unknowns === 'drag'
      ? [start]
      : SLACK_FACTORS.map((factor) => ({ ...start, slack_m: factor * slack_m }));
  const ratios = [0, Math.max(MOST_PLANING, bait.lift_to_drag)];
  return ratios.flatMap((lift_to_drag) =>
    starts.flatMap((unknownStart) =>
      DRAG_AREA_FACTORS.map((factor) => ({
        ...scenario,
        start: unknownStart,
        bait: { ...bait, lift_to_drag, drag_area_m2: factor * bait.drag_area_m2 }
      }))
    )
  );
}

/** Least reach of a rod, m: what the model takes. */
const LEAST_REACH_M = 0.1;

/** The scenario as far from what it says as `end` lies from `middle`. */
function movedBy(scenario: Scenario, middle: OwnValues, end: OwnValues): Scenario {
  const by = (name: UnknownName) => (end[name] ?? 0) - (middle[name] ?? 0);
  const times = (end.drag_area_m2 ?? 1) / (middle.drag_area_m2 ?? 1);
  const { rod, bait, start, move } = scenario;
  const { slack_m } = start;
  return {
    ...scenario,
    rod: { ...rod, length_m: Math.max(LEAST_REACH_M, rod.length_m + by('reach_m')) },
    bait: {
      ...bait,
      drag_area_m2: times * bait.drag_area_m2,
      lift_to_drag: Math.min(1, Math.max(0, bait.lift_to_drag + by('lift_to_drag')))
    },
    start:
      slack_m === undefined ? start : { ...start, slack_m: Math.max(0, slack_m + by('slack_m')) },
    move: raisedMove(move, by('elevation_deg'))
  };
}

/** A figure with what the unknowns make of it, in its own unit. */
export interface Band {
  /** Of the scenario as it is said. */
  nominal: number;
  /** In every corner of what is unknown, in the same order for every scenario. */
  corners: number[];
  /** Give or take: to the farthest corner, or to the 90 % ends of what an outfit's own tests leave open. */
  half: number;
  /** Where it may lie: from the least of the corners to the most, or so much below and above by its tests. */
  ends: readonly [low: number, high: number];
}

/** The band of a figure; `figure` runs the model once as it is said and once in each corner: ten or fewer. */
export function bandOf(
  scenario: Scenario,
  figure: (scenario: Scenario) => number,
  unknowns?: Unknowns
): Band {
  return bandsOf(scenario, (one) => ({ figure: figure(one) }), unknowns).figure;
}

/** The same of several figures that are read off one run. */
export function bandsOf<Figures extends object>(
  scenario: Scenario,
  read: (scenario: Scenario) => Figures & Record<keyof Figures, number>,
  unknowns?: Unknowns
): Record<keyof Figures, Band> {
  const said = read(scenario);
  const inCorners = cornersOf(scenario, unknowns).map(read);
  const names = Object.keys(said) as (keyof Figures)[];
  const bands = names.map((name) => {
    const nominal: number = said[name];
    const corners = inCorners.map((one): number => one[name]);
    const off = corners.map((value) => Math.abs(value - nominal));
    const isOwn = typeof unknowns === 'object';
    const half = isOwn ? ofPairs(off) : Math.max(...off);
    const ends = isOwn
      ? [nominal - half, nominal + half]
      : [Math.min(nominal, ...corners), Math.max(nominal, ...corners)];
    return [name, { nominal, corners, half, ends }];
  });
  return Object.fromEntries(bands) as Record<keyof Figures, Band>;
}

/** Of each pair the farther end, all of them as independent errors. */
function ofPairs(off: readonly number[]): number {
  const pairs = off.filter((_, i) => i % 2 === 0).map((one, i) => Math.max(one, off[2 * i + 1]));
  return Math.hypot(...pairs);
}
