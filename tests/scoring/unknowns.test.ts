import { expect, test } from 'vitest';
import { parseScenario, simulateScenario } from '../../src/lib/model';
import { bandOf, cornersOf } from '../../src/lib/scoring';

const scenario = parseScenario({
  water: { depth_m: 4 },
  line: { diameter_m: 0.00033 },
  bait: { mass_kg: 0.014, drag_area_m2: 7e-4 },
  start: { bait_x_m: 20, slack_m: 0.1 },
  move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 0.6 },
  hold_s: 2
});

test('corners are no slack or twice, half the drag area or twice, no planing or the most', () => {
  const said = cornersOf(scenario).map(({ start, bait }) =>
    [start.slack_m, bait.drag_area_m2, bait.lift_to_drag].join()
  );
  expect(new Set(said).size).toBe(8);
  for (const drag of [3.5e-4, 1.4e-3]) {
    for (const planing of [0, 0.4]) expect(said).toContain([0.2, drag, planing].join());
  }
});

test('where slack is what is asked, it stays as it is said', () => {
  const corners = cornersOf(scenario, 'drag');
  expect(corners).toHaveLength(4);
  expect(corners.every(({ start }) => start.slack_m === 0.1)).toBe(true);
});

test('a bait that is said to plane more than the most may plane so much', () => {
  const bait = { ...scenario.bait, lift_to_drag: 0.6 };
  expect(cornersOf({ ...scenario, bait }).some((one) => one.bait.lift_to_drag === 0.6)).toBe(true);
});

test('the height of a fast sweep is known to inches only, for the bait may plane', () => {
  const height = bandOf(scenario, (one) => simulateScenario(one).peak_height_m);
  expect(height.half).toBe(Math.max(...height.corners.map((m) => Math.abs(m - height.nominal))));
  // An experiment on this model saw planing turn inches into a foot (docs/planing.md).
  expect(height.half).toBeGreaterThan(0.1);
});
