import { describe, expect, test } from 'vitest';
import { parseSetup, type SetupInput } from '../../src/lib/model';
import { lineOf, type Line } from '../../src/lib/model/line';
import { lineProperties } from '../../src/lib/model/scenario';
import { baitWith, NO_BOTTOM, rigOf, WATER_15C } from './rig';

/** Main line and leader as unlike as they are tied, the leader ending within a piece. */
const SETUP: SetupInput = {
  water: { depth_m: 30 },
  line: {
    material: 'braid',
    diameter_m: 0.0002,
    leader: { material: 'fluorocarbon', diameter_m: 0.0004, length_m: 3.1 }
  },
  bait: { mass_kg: 0.02 },
  start: { bait_x_m: 15 },
  numerics: { segments: 40 }
};
const LENGTH_M = 20;
const LEADER_M = 3.1;
const MAIN_M = LENGTH_M - LEADER_M;

const setup = parseSetup(SETUP);
const main = lineProperties(setup.line);
const leader = lineProperties(setup.line.leader ?? setup.line);
const areaOf = ({ diameter_m }: typeof main) => (Math.PI / 4) * diameter_m ** 2;
const stiffnessOf = (part: typeof main) => part.youngs_modulus_Pa * areaOf(part);
const line = lineOf(setup, WATER_15C, LENGTH_M);
const PIECE_M = LENGTH_M / line.segments;
const sumOf = (list: Float64Array) => list.reduce((sum, one) => sum + one * PIECE_M, 0);

describe('a main line with a leader', () => {
  test('weighs what both parts weigh, in air and in water', () => {
    const mass =
      main.density_kg_m3 * areaOf(main) * MAIN_M + leader.density_kg_m3 * areaOf(leader) * LEADER_M;
    const displaced = WATER_15C.density_kg_m3 * (areaOf(main) * MAIN_M + areaOf(leader) * LEADER_M);
    expect(sumOf(line.massPerLength_kg_m) / mass).toBeCloseTo(1, 12);
    expect(sumOf(line.weightInWater_N_m) / ((mass - displaced) * 9.80665)).toBeCloseTo(1, 12);
  });

  // Springs in a row: the stretch of each part is pull × length over its stiffness (Hooke).
  test('stretches by T L₁/EA₁ + T L₂/EA₂ under a hung weight', () => {
    const WEIGHT_N = 2;
    const weightless: Line = {
      ...line,
      weightInAir_N_m: new Float64Array(40),
      weightInWater_N_m: new Float64Array(40)
    };
    const bait = baitWith({ mass_kg: 0.2, weightInWater_N: WEIGHT_N });
    const tip = { x: 0, z: -1 };
    const rig = rigOf(
      weightless,
      bait,
      NO_BOTTOM,
      tip,
      { x: 0, z: -1 - LENGTH_M },
      LENGTH_M,
      false
    );
    rig.solver.settling_N_s_m = 1;
    for (let i = 0; i < 4000; i++) rig.solver.step(0.005, tip);
    const stretch = -1 - LENGTH_M - rig.bait().z;
    const exact = WEIGHT_N * (MAIN_M / stiffnessOf(main) + LEADER_M / stiffnessOf(leader));
    // A stretch of a millimetre is linear: nothing but rounding is left once it hangs still.
    expect(stretch / exact).toBeCloseTo(1, 5);
  });

  test('drags by the skin of both parts when it is drawn along itself', () => {
    const speed = 1;
    const afloat: Line = {
      ...line,
      weightInAir_N_m: new Float64Array(40),
      weightInWater_N_m: new Float64Array(40)
    };
    const free = baitWith({ mass_kg: 1e-6, weightInWater_N: 0 });
    const tip = { x: 0, z: -2 };
    const rig = rigOf(afloat, free, NO_BOTTOM, tip, { x: LENGTH_M, z: -2 }, LENGTH_M, false);
    for (let t = 0.002; t < 4; t += 0.002) rig.solver.step(0.002, { x: -speed * t, z: -2 });
    const skin = ({ diameter_m, tangential_drag }: typeof main, length_m: number) =>
      0.5 *
      WATER_15C.density_kg_m3 *
      tangential_drag *
      Math.PI *
      diameter_m *
      length_m *
      speed ** 2;
    // The held first node carries no drag of its own, and nodes count the piece above them: half a piece of
    // main line, and half of one in which the leader is twice as thick, of forty-six such.
    const exact = skin(main, MAIN_M - PIECE_M / 2) + skin(leader, LEADER_M);
    expect(Math.abs(rig.solver.tensionNow(0) / exact - 1)).toBeLessThan(0.02);
  });
});
