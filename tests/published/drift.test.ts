import { describe, expect, test } from 'vitest';
import { parseScenario, simulate, type ScenarioInput } from '../../src/lib/model';
import { baitOf } from '../../src/lib/model/bait';
import { Run } from '../../src/lib/model/run';
import { tipPathOf } from '../../src/lib/model/tip-path';
import { waterAt } from '../../src/lib/model/water';
import { baitWith, lineWith, NO_BOTTOM, rigOf, WATER_15C, type LineOptions, type Rig } from './rig';

const DIAMETER_M = 0.00033;
const NORMAL_DRAG = 1.2;
const RHO = WATER_15C.density_kg_m3;

/** Drifts off to the left at `speed` for `duration_s`, the tip level. */
function towed(rig: Rig, speed: number, duration_s: number, step_s: number): void {
  const { x, z } = rig.state.tip;
  const steps = Math.round(duration_s / step_s);
  for (let i = 1; i <= steps; i++) rig.solver.step(step_s, { x: x - speed * i * step_s, z });
}

describe('a line that a boat draws along', () => {
  // Nothing at its end, weight w and drag R across a metre: it runs straight at the angle at which
  // w cos φ = R sin² φ. Angles are that equation solved; the classical tables are Pode, DTMB Report
  // 687, 1951 (not seen). The drag along the line pulls on it and does not turn it.
  test.each([
    [0.1, 84.32],
    [1, 51.83],
    [10, 17.96],
    [100, 5.72]
  ])('with drag over weight %f stands at its critical angle, %f°', (ratio, angle_deg) => {
    const line = lineWith({
      segments: 20,
      diameter_m: DIAMETER_M,
      density_kg_m3: 1780,
      youngs_modulus_Pa: 2.5e9,
      normal_drag: NORMAL_DRAG,
      tangential_drag: (0.02 * NORMAL_DRAG) / Math.PI
    });
    const perSpeedSquared = 0.5 * RHO * DIAMETER_M * NORMAL_DRAG;
    const speed = Math.sqrt((ratio * line.weightInWater_N_m[0]) / perSpeedSquared);
    const length = 2;
    const free = baitWith({ mass_kg: 1e-7, weightInWater_N: 0 });
    // Laid at 45°, which is none of the angles.
    const end = { x: length * Math.SQRT1_2, z: -1 - length * Math.SQRT1_2 };
    const rig = rigOf(line, free, NO_BOTTOM, { x: 0, z: -1 }, end, length, false);
    // Three times the time in which the water has gone by its whole length.
    towed(rig, speed, (3 * length) / speed + 20, 0.02);
    const { x, z } = rig.state;
    const stood_deg = (Math.atan2(z[5] - z[15], x[15] - x[5]) * 180) / Math.PI;
    // Angles are given to 0.01°, and the last node's half piece weighs on the end: 0.1° for both.
    expect(Math.abs(stood_deg - angle_deg)).toBeLessThan(0.1);
  });

  // A line as heavy as the water with drag R sin² φ across it: T is the same everywhere and
  // T dφ/ds = R sin² φ, so cot φ grows evenly, by R/T a metre, and the line is a catenary of parameter
  // T/R (the towing cable without weight; Glauert 1934, R&M 1592, from memory).
  test('with a weight at its end bows to the catenary of parameter pull over drag', () => {
    const speed = 0.3;
    const length = 20;
    const WEIGHT_N = 0.18;
    const AREA_M2 = 6e-4;
    const options: LineOptions = {
      segments: 40,
      diameter_m: DIAMETER_M,
      density_kg_m3: RHO,
      youngs_modulus_Pa: 1e11,
      normal_drag: NORMAL_DRAG
    };
    const bait = baitWith({ mass_kg: 0.02, weightInWater_N: WEIGHT_N, dragArea_m2: AREA_M2 });
    const start = { x: 17, z: -1 - Math.sqrt(length ** 2 - 17 ** 2) };
    const rig = rigOf(lineWith(options), bait, NO_BOTTOM, { x: 0, z: -1 }, start, length, false);
    towed(rig, speed, 250, 0.02);
    const drag_N = 0.5 * RHO * AREA_M2 * speed ** 2;
    const pull_N = Math.hypot(WEIGHT_N, drag_N);
    const parameter = pull_N / (0.5 * RHO * DIAMETER_M * NORMAL_DRAG * speed ** 2);
    const below = drag_N / WEIGHT_N;
    const above = below + length / parameter;
    const back = parameter * (Math.hypot(1, above) - Math.hypot(1, below));
    const down = parameter * (Math.asinh(above) - Math.asinh(below));
    const { tip } = rig.state;
    // Second order in the pieces, of which each turns by three degrees at most: a part in a thousand.
    expect(Math.abs((rig.bait().x - tip.x) / back - 1)).toBeLessThan(2e-3);
    expect(Math.abs((tip.z - rig.bait().z) / down - 1)).toBeLessThan(2e-3);
    for (const piece of [0, 20, 39])
      expect(Math.abs(rig.solver.tensionNow(piece) / pull_N - 1)).toBeLessThan(2e-3);
    // And that is a bow to be seen: more than a tenth of the chord away from it.
    expect(bowOf(rig.state)).toBeGreaterThan(0.1 * Math.hypot(back, down));
  });
});

/** Farthest of the line's nodes above the chord from end to end, m; negative for one that sags. */
function bowOf({ x, z }: { x: Float64Array; z: Float64Array }): number {
  const n = x.length - 1;
  const chord = Math.hypot(x[n] - x[0], z[n] - z[0]);
  const above = Array.from(
    x,
    (xi, i) => ((x[n] - x[0]) * (z[i] - z[0]) - (z[n] - z[0]) * (xi - x[0])) / chord
  );
  return above.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
}

describe('a jig behind a boat that drifts', () => {
  const DRIFT_M_S = 0.4;
  const CAST: ScenarioInput = {
    water: { depth_m: 4 },
    line: { material: 'fluorocarbon', diameter_m: DIAMETER_M },
    bait: { mass_kg: 0.021 },
    start: { bait_x_m: 20, slack_m: 0.1 },
    drift_m_s: -DRIFT_M_S,
    move: { kind: 'tip_path', t_s: [0, 1], x_m: [1.9, 1.9], z_m: [1.2, 1.2] },
    hold_s: 20
  };

  test('goes as fast as the boat once the slack is out', () => {
    const { bait_x_m, t_s } = simulate({ ...CAST, hold_s: 30 }).trace;
    const at = (time: number) => bait_x_m[t_s.findIndex((t) => t >= time)];
    // The line still straightens and draws the bait in on the way: 1.1 % faster at 15 s, 0.6 % at 25 s.
    expect(Math.abs((at(24) - at(29)) / (5 * DRIFT_M_S) - 1)).toBeLessThan(0.01);
  });

  test('is pulled by what friction and water take: T cos α = μ(W − T sin α) + ½ρ CdA v²', () => {
    const setup = parseScenario(CAST);
    const run = new Run(setup, tipPathOf(setup, setup.move));
    const bowAtRest = bowOf(run.nodes as never);
    for (let tick = 0; tick < 2000; tick++) run.tick();
    const { x, z } = run.nodes;
    const n = x.length - 1;
    const alpha = Math.atan2(z[n - 1] - z[n], x[n] - x[n - 1]);
    const pull_N = run.record.trace.bait_tension_N.at(-1) ?? NaN;
    const water = waterAt(15);
    const { weightInWater_N, drag } = baitOf(setup, water);
    const load_N = weightInWater_N - pull_N * Math.sin(alpha);
    const taken_N = setup.bottom.friction * load_N + drag * DRIFT_M_S ** 2;
    // Half a piece of line at the bait weighs 0.2 mN and drags 1 mN with it, of some 150: 1.5 %.
    expect(Math.abs((pull_N * Math.cos(alpha)) / taken_N - 1)).toBeLessThan(0.015);
    // At rest the line sags below its chord; drawn along, the water bows it up instead.
    expect(bowAtRest).toBeLessThan(-0.05);
    expect(bowOf(run.nodes as never)).toBeGreaterThan(0.05);
  });
});
