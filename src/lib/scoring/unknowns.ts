import type { Scenario } from '../model';

/**
 * What nobody on the water knows: how the skirt flutters, a factor of two either way in drag area, how
 * much slack was left, from none to twice what was meant (bait-model band, docs/model.md), and how much
 * the bait planes (docs/planing.md).
 */
const DRAG_AREA_FACTORS = [0.5, 2];
const SLACK_FACTORS = [0, 2];
const MOST_PLANING = 0.4;

/** What of a scenario nobody knows; where slack is what is asked, only what the water does to the bait. */
export type Unknowns = 'slack and drag' | 'drag';

/** The scenario as it may really have been: every corner of what is unknown, in the same order for each. */
export function cornersOf(scenario: Scenario, unknowns: Unknowns = 'slack and drag'): Scenario[] {
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

/** A figure with what the unknowns make of it, in its own unit. */
export interface Band {
  /** Of the scenario as it is said. */
  nominal: number;
  /** In every corner of what is unknown, in the same order for every scenario. */
  corners: number[];
  /** Farthest corner from the nominal: give or take. */
  half: number;
}

/** The band of a figure; `figure` runs the model, four or eight times here and once as it is said. */
export function bandOf(
  scenario: Scenario,
  figure: (scenario: Scenario) => number,
  unknowns?: Unknowns
): Band {
  const nominal = figure(scenario);
  const corners = cornersOf(scenario, unknowns).map(figure);
  return { nominal, corners, half: Math.max(...corners.map((value) => Math.abs(value - nominal))) };
}
