import { expect, test } from 'vitest';
import {
  AXES,
  exploredScenario,
  valuesOn,
  type ExploreBase
} from '../../../src/lib/app/explore/axes';
import { chartCsv, chartScale } from '../../../src/lib/app/explore/figures';
import { figuresOfRuns } from '../../../src/lib/compute/jobs/figures';
import { parseScenario, simulate, simulateScenario } from '../../../src/lib/model';
import { FIRST_GEAR, setupOf } from '../../../src/lib/sandbox/gear';
import { bandOf, contactWhileMoving } from '../../../src/lib/scoring';

const base: ExploreBase = {
  setup: setupOf(FIRST_GEAR),
  kind: 'sweep',
  to_deg: 45,
  duration_s: 1.5,
  spread: undefined
};

test.each(Object.entries(AXES))(
  'along %s a value that is set is the one that is there',
  (_, axis) => {
    const value = axis.least + 0.4 * (axis.most - axis.least);
    expect(axis.of(axis.set(base, value))).toBe(value);
  }
);

test.each(Object.entries(AXES))('at both ends of %s the run can be made', (_, axis) => {
  const ends = [axis.least, axis.most].map((value) => exploredScenario(axis.set(base, value)));
  expect(figuresOfRuns({ scenarios: ends }).filter((one) => one === null)).toEqual([]);
});

test('a chart’s figures are those of single runs, and its bands those of any figure', () => {
  const scenario = exploredScenario(base);
  const [made] = figuresOfRuns({ scenarios: [scenario], unknowns: 'slack and drag' });
  const result = simulate(scenario);
  expect(made?.figures).toEqual({
    travel_m: result.travel_m,
    peak_height_m: result.peak_height_m,
    contact: contactWhileMoving(result)
  });
  const travel = bandOf(parseScenario(scenario), (one) => simulateScenario(one).travel_m);
  expect(made?.half?.travel_m).toBe(travel.half);
});

test('what cannot be is left out, and the others are there', () => {
  const scenario = exploredScenario(base);
  const none = { ...scenario, water: { depth_m: -1 } };
  expect(figuresOfRuns({ scenarios: [none, scenario] }).map((one) => one !== null)).toEqual([
    false,
    true
  ]);
});

test('few values come first and the finer ones lie between, none twice', () => {
  const { first, finer } = valuesOn(AXES.depth);
  expect([first[0], first.at(-1)]).toEqual([AXES.depth.least, AXES.depth.most]);
  expect(new Set([...first, ...finer]).size).toBe(first.length + finer.length);
  // With forty runs a second on two cores, the first picture is there in 300 ms.
  expect(first.length).toBeLessThan(10);
});

test('a hand that is known to hold the rod low makes its moves so', () => {
  const low = { ...base, spread: { middle: { elevation_deg: -8 }, ends: [] } };
  expect(exploredScenario({ ...low, kind: 'lift' }).move).toMatchObject({
    from_deg: -8,
    to_deg: 37
  });
});

test('points lie inside the frame, bands with them, and go into a table', () => {
  const points = [
    { at: 10, figures: { travel_m: 0.2, peak_height_m: 0, contact: 1 }, half: null },
    {
      at: 90,
      figures: { travel_m: 1.4, peak_height_m: 0.2, contact: 0.5 },
      half: { travel_m: 0.3, peak_height_m: 0.1, contact: 0.2 }
    }
  ];
  const frame = { left: 0, right: 100, top: 0, bottom: 50 };
  const scale = chartScale(points, 'travel_m', AXES.angle, 'imperial', frame);
  for (const m of [0, 0.2, 1.7]) {
    expect(scale.y(m)).toBeGreaterThanOrEqual(0);
    expect(scale.y(m)).toBeLessThanOrEqual(50);
  }
  expect(scale.y(1.4)).toBeLessThan(scale.y(0.2));
  expect(chartCsv(points, 'angle').split('\r\n')[2]).toBe('90,1.4,0.3,0.2,0.1,0.5,0.2');
});
