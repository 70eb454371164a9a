import { simulateScenario, type Scenario } from '../model';

/**
 * What nobody on the water knows: how the skirt flutters, a factor of two either way in drag area,
 * and how much slack was left, from none to twice what was meant (bait-model band, docs/model.md).
 */
const DRAG_AREA_FACTORS = [0.5, 2];
const SLACK_FACTORS = [0, 2];

/** The scenario as it may really have been: every corner of what is unknown. */
export function cornersOf(scenario: Scenario): Scenario[] {
  const { start } = scenario;
  const starts =
    start.slack_m === undefined
      ? [start]
      : SLACK_FACTORS.map((factor) => ({ ...start, slack_m: factor * (start.slack_m ?? 0) }));
  return starts.flatMap((unknownStart) =>
    DRAG_AREA_FACTORS.map((factor) => ({
      ...scenario,
      start: unknownStart,
      bait: { ...scenario.bait, drag_area_m2: factor * scenario.bait.drag_area_m2 }
    }))
  );
}

/** By how much at most the bait's travel differs in those corners, m. */
export function travelSpread(scenario: Scenario): number {
  const { travel_m } = simulateScenario(scenario);
  const others = cornersOf(scenario).map((corner) => simulateScenario(corner).travel_m);
  return Math.max(...others.map((other) => Math.abs(other - travel_m)));
}
