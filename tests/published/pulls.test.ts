import { describe, expect, test } from 'vitest';
import { fallSpeed } from '../../src/lib/model';
import { baitWith, lineWith, planeUnderBait, rigOf, WATER_15C, type LineOptions } from './rig';

/** Neither weight nor drag: the line only passes on the pull. */
const STRING: LineOptions = {
  segments: 4,
  diameter_m: 0.0002,
  density_kg_m3: WATER_15C.density_kg_m3,
  youngs_modulus_Pa: 2.5e9
};
const WEIGHT_N = 0.18;
const FRICTION = 0.4;
const FOOT = { x: 6, z: -6 };
const STEP_S = 0.001;

function pulledAt(angle_deg: number, length_m: number, dragArea_m2 = 0, friction = FRICTION) {
  const a = (angle_deg * Math.PI) / 180;
  const tip = { x: FOOT.x - length_m * Math.cos(a), z: FOOT.z + length_m * Math.sin(a) };
  const bait = baitWith({ mass_kg: 0.02, weightInWater_N: WEIGHT_N, dragArea_m2 });
  const rig = rigOf(lineWith(STRING), bait, planeUnderBait(FOOT, friction), tip, FOOT, length_m);
  return { rig, tip };
}

describe('a slow pull on a body on a flat', () => {
  const leastPull = (angle_deg: number): number => {
    const { rig, tip } = pulledAt(angle_deg, 5);
    const a = (angle_deg * Math.PI) / 180;
    const last = rig.state.nodes - 2;
    for (let t = STEP_S; t < 20; t += STEP_S) {
      const before = rig.solver.tensionNow(last);
      const way = 0.001 * t;
      rig.solver.step(STEP_S, { x: tip.x - way * Math.cos(a), z: tip.z + way * Math.sin(a) });
      if (rig.bait().x < FOOT.x - 1e-7) return before;
    }
    return NaN;
  };
  const exact = (angle_deg: number): number => {
    const a = (angle_deg * Math.PI) / 180;
    return (FRICTION * WEIGHT_N) / (Math.cos(a) + FRICTION * Math.sin(a));
  };

  // Any statics text: P = μW/(cos α + μ sin α).
  test.each([0, 10, 21.8, 45, 70, 85])(
    'moves it at the least pull when the line stands at %f°',
    (a) => {
      expect(Math.abs(leastPull(a) / exact(a) - 1)).toBeLessThan(3e-3);
    }
  );

  test('is smallest where the tangent of the angle is the friction', () => {
    const best = (Math.atan(FRICTION) * 180) / Math.PI;
    const pulls = [best - 8, best, best + 8].map(leastPull);
    expect(pulls[1]).toBeLessThan(pulls[0]);
    expect(pulls[1]).toBeLessThan(pulls[2]);
  });

  // Since the least pull is below W/sin α for every α < 90°: a slow pull never lifts.
  test.each([20, 60, 80])('never lifts it, from %d° to all but upright', (start_deg) => {
    const length = 4;
    const { rig, tip } = pulledAt(start_deg, length);
    const rise = 0.01;
    const upright = FOOT.z + length * Math.sin((88 * Math.PI) / 180);
    let steps = 0;
    let lifted = 0;
    for (let z = tip.z; z < upright; z += rise * STEP_S, steps++) {
      rig.solver.step(STEP_S, { x: tip.x, z });
      if (rig.bait().z !== FOOT.z) lifted++;
    }
    expect(lifted).toBe(0);
    expect(steps).toBeGreaterThan(1000);
    expect(rig.bait().x).toBeLessThan(FOOT.x - 0.5 * (FOOT.x - tip.x));
  });
});

describe('a body towed steadily along the bottom', () => {
  const AREA_M2 = 6e-4;
  const fall = fallSpeed(WEIGHT_N, AREA_M2, WATER_15C.density_kg_m3);
  /** Highest point reached while towed, after a slow start, at `speed` with the line at `angle_deg`. */
  const heightWhenTowed = (angle_deg: number, speed: number, friction: number): number => {
    const { rig, tip } = pulledAt(angle_deg, 5, AREA_M2, friction);
    const rampUp_s = 20;
    let x = tip.x;
    let highest = 0;
    for (let t = STEP_S; t < rampUp_s + 5; t += STEP_S) {
      x -= speed * Math.min(1, t / rampUp_s) * STEP_S;
      rig.solver.step(STEP_S, { x, z: tip.z });
      highest = Math.max(highest, rig.bait().z - FOOT.z);
    }
    return highest;
  };
  // T cos α = ½ρ CdA v² and T sin α = W: v = fall speed/√tan α, whatever the friction.
  test.each([
    [15, 0.4],
    [30, 0.4],
    [30, 0],
    [45, 0.6],
    [60, 0.4]
  ])('with the line at %d° and friction %f leaves it at fall speed/√tan α', (angle, friction) => {
    const liftOff = fall / Math.sqrt(Math.tan((angle * Math.PI) / 180));
    expect(heightWhenTowed(angle, 0.985 * liftOff, friction)).toBe(0);
    expect(heightWhenTowed(angle, 1.015 * liftOff, friction)).toBeGreaterThan(1e-3);
  });
});
