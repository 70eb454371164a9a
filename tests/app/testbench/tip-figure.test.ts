import { expect, test } from 'vitest';
import { dragFigure } from '../../../src/lib/compute/jobs/card';
import { tipAsked, tipText } from '../../../src/lib/app/testbench/tip-figure';

const gear = {
  water: { depth_m: 2.4 },
  line: { material: 'fluorocarbon', diameter_m: 0.00028 },
  bait: { mass_kg: 0.0142 },
  rod: { length_m: 1.8 },
  start: { bait_x_m: 12, slack_m: 0.15 }
} as const;
const middle = { reach_m: 2.1, slack_m: 0.02, drag_area_m2: 8e-4, lift_to_drag: 0.1 };
const spread = {
  middle,
  ends: [
    { ...middle, slack_m: 0 },
    { ...middle, slack_m: 0.05 }
  ]
};
const DEEP_M = 18 * 0.3048;

test('what the pool told is said of a foot of tip in the lake', () => {
  const asked = tipAsked({ gear }, { spread }, DEEP_M, 'imperial');
  expect(asked.setup).toMatchObject({
    water: { depth_m: DEEP_M },
    rod: { length_m: 2.1 },
    bait: { mass_kg: 0.0142, drag_area_m2: 8e-4, lift_to_drag: 0.1 }
  });
  const text = tipText(dragFigure(asked), asked.setup, 'imperial').replaceAll('\u00a0', ' ');
  expect(text).toMatch(
    /^1 ft of tip moves the jig (1 ft|\d+ in) ± [\d½]+ in at 18 ft, 45 ft out with 1 in of slack\./
  );
});

test('a rod too short for it is said to be, and a drag that may lift says so', () => {
  const figure = { duration_s: 2, came: null, lifts: false };
  const at = { water: { depth_m: 6 }, start: { bait_x_m: 14, slack_m: 0.02 } };
  expect(tipText(figure, at, 'metric').replaceAll('\u00a0', ' ')).toBe(
    'This rod can’t do it at 6 m.'
  );
  const lifted = tipText({ ...figure, came: [0.28, 0.025], lifts: true }, at, 'metric');
  expect(lifted.replaceAll('\u00a0', ' ')).toBe(
    '30 cm of tip moves the jig 28 cm ± 3 cm at 6 m, 14 m out with 2 cm of slack. It may leave the bottom.'
  );
});
