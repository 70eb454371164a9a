import { expect, test } from 'vitest';
import { stiffnessOf } from '../../src/lib/fit/outfit';
import { GRAVITY_M_S2 } from '../../src/lib/model';
import { LineSolver } from '../../src/lib/model/line-solver';
import { LineState } from '../../src/lib/model/line-state';
import { baitWith, lineWith, NO_BOTTOM } from './rig';

/**
 * Large deflection of a cantilever with a weight at its end (Bisshopp & Drucker 1945, Q. Appl. Math. 3):
 * P L²/EI, and how far the end goes down over the length.
 */
const CANTILEVER: [load: number, down: number][] = [
  [0.25, 0.08275],
  [0.5, 0.16214],
  [1, 0.30172],
  [2, 0.49346]
];
const LENGTH_M = 1.9;
/** Of a blank that gives 8 N/m at its tip: k = 3 EI/L³ (any text on beams). */
const EI_N_M2 = (8 * LENGTH_M ** 3) / 3;
const SMALL_LOAD_N_M = (3 * EI_N_M2) / LENGTH_M ** 3;

/** What a weight hung from the tip measures, over the stiffness that a light pull meets. */
const measured = ([load, down]: [number, number]) =>
  stiffnessOf({
    hung_kg: (load * EI_N_M2) / LENGTH_M ** 2 / GRAVITY_M_S2,
    down_m: down * LENGTH_M
  }) / SMALL_LOAD_N_M;

test('a hung weight measures 3EI/L³ within 3 % while the tip goes down by a sixth of the rod', () => {
  const [light, sixth] = CANTILEVER.map(measured);
  expect(Math.abs(light - 1)).toBeLessThan(0.01);
  expect(Math.abs(sixth - 1)).toBeLessThan(0.03);
});

test('a weight that bends it by half measures a third more: such a one is too heavy', () => {
  const [, , heavy, heavier] = CANTILEVER.map(measured);
  expect(heavy).toBeGreaterThan(1.08);
  expect(heavier).toBeGreaterThan(1.3);
});

test('the model’s tip goes down by what hangs on it over the stiffness', () => {
  const WEIGHT_N = 1;
  const line = lineWith({
    segments: 4,
    diameter_m: 3e-5,
    density_kg_m3: 999.1,
    youngs_modulus_Pa: 1e11
  });
  const bait = baitWith({ mass_kg: 0.1, weightInWater_N: WEIGHT_N });
  const tip = { x: 1.9, z: -1 };
  const z_m = Float64Array.from({ length: 5 }, (_, i) => -1 - i / 4);
  const state = LineState.atRest({ x_m: new Float64Array(5).fill(tip.x), z_m }, tip);
  const rod = { stiffness_N_m: SMALL_LOAD_N_M, damping_N_s_m: 2 };
  const solver = new LineSolver(state, line, bait, NO_BOTTOM, rod, 1 / 4);
  for (let i = 0; i < 4000; i++) solver.step(0.005, tip);
  // What hangs on it is the bait and a metre of line that weighs nothing in this water.
  expect((tip.z - state.z[0]) / (WEIGHT_N / SMALL_LOAD_N_M)).toBeCloseTo(1, 6);
  expect(state.x[0]).toBeCloseTo(tip.x, 9);
});
