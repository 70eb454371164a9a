import { expect, test } from 'vitest';
import { parseScenario, simulateScenario } from '../../src/lib/model';
import { simulateExplicitly } from './explicit-peer';
import { baitWith, lineWith, NO_BOTTOM, rigOf } from './rig';

/** UHMWPE fibre, Pa (producers' data sheets): six times what a loose weave is taken to give. */
const FIBRE_PA = 117e9;
const DIAMETER_M = 0.00025;

test('braid as stiff as its fibre stops a bait as a spring does: peak pull v √(EA m/L)', () => {
  const length = 20;
  const mass_kg = 0.02;
  const speed = 1.5;
  const line = lineWith({
    segments: 40,
    diameter_m: DIAMETER_M,
    // So light that it is no more than the spring.
    density_kg_m3: 1,
    youngs_modulus_Pa: FIBRE_PA
  });
  const massless = {
    ...line,
    weightInAir_N_m: new Float64Array(40),
    weightInWater_N_m: new Float64Array(40)
  };
  const bait = baitWith({ mass_kg, weightInWater_N: 0 });
  const tip = { x: 0, z: -1 };
  const rig = rigOf(massless, bait, NO_BOTTOM, tip, { x: length, z: -1 }, length, false);
  const step_s = 0.00125;
  const n = rig.state.nodes - 1;
  for (let i = 0; i <= n; i++) {
    rig.state.vx[i] = rig.state.vxBefore[i] = (speed * i) / n;
    rig.state.xBefore[i] = rig.state.x[i] - rig.state.vx[i] * step_s;
  }
  rig.state.lastStep_s = step_s;
  let peak_N = 0;
  for (let t = 0; t < 0.04; t += step_s) {
    rig.solver.step(step_s, tip);
    peak_N = Math.max(peak_N, rig.solver.tensionNow(n - 1));
  }
  const stiffness_N = (FIBRE_PA * Math.PI * DIAMETER_M ** 2) / 4;
  const exact_N = speed * Math.sqrt((stiffness_N * mass_kg) / length);
  // A quarter period is 13 ms, ten of the steps that a run takes there: second order leaves 1 %.
  expect(Math.abs(peak_N / exact_N - 1)).toBeLessThan(0.015);
});

test('a lift on braid as stiff as its fibre is what the explicit scheme finds', () => {
  const scenario = parseScenario({
    water: { depth_m: 4 },
    line: { material: 'braid', diameter_m: DIAMETER_M, youngs_modulus_Pa: FIBRE_PA },
    bait: { mass_kg: 0.021 },
    start: { bait_x_m: 20, slack_m: 0.1 },
    move: { kind: 'lift', from_deg: 0, to_deg: 45, duration_s: 0.5 },
    hold_s: 1.2,
    numerics: { segments: 16 }
  });
  const ours = simulateScenario(scenario);
  const peer = simulateExplicitly(scenario);
  // The design's targets beside an independent solver: travel 2 %, height 5 % or 3 mm, pull 3 %.
  expect(Math.abs(ours.travel_m / peer.travel_m - 1)).toBeLessThan(0.02);
  expect(Math.abs(ours.peak_height_m - peer.peak_height_m)).toBeLessThan(
    Math.max(0.003, 0.05 * peer.peak_height_m)
  );
  expect(Math.abs(ours.peak_tip_tension_N / peer.peak_tip_tension_N - 1)).toBeLessThan(0.03);
});
