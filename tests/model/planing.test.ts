import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
import { planingForce } from '../../src/lib/model/planing';
import { baitWith } from '../published/rig';

const bait = {
  ...baitWith({ mass_kg: 0.014, weightInWater_N: 0.12, dragArea_m2: 7e-4 }),
  liftToDrag: 0.3
};
const speed = fc.double({ min: -3, max: 3, noNaN: true });
const forceAt = (vx: number, vz: number) => {
  const out = { x: 0, z: 0 };
  planingForce(bait, vx, vz, out);
  return out;
};

describe('planing', () => {
  test('does no work, and is never downward', () => {
    fc.assert(
      fc.property(speed, speed, (vx, vz) => {
        const { x, z } = forceAt(vx, vz);
        // Rounding of products of numbers up to 3.
        expect(Math.abs(x * vx + z * vz)).toBeLessThan(1e-12);
        expect(z).toBeGreaterThanOrEqual(0);
      })
    );
  });

  test('is its share of the drag on a level way, and nothing on a fall', () => {
    expect(forceAt(-1.2, 0)).toEqual({ x: expect.closeTo(0, 12), z: 0.3 * bait.drag * 1.44 });
    expect(Math.hypot(forceAt(0, -1).x, forceAt(0, -1).z)).toBe(0);
  });

  const sweep = (lift_to_drag: number, mass_kg = 0.0142) =>
    simulate({
      water: { depth_m: 6 },
      line: { material: 'fluorocarbon', diameter_m: 0.00033 },
      bait: { mass_kg, drag_area_m2: 7e-4, lift_to_drag },
      start: { bait_x_m: 24, slack_m: 0.05 },
      move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 0.6 },
      hold_s: 5
    });

  test('lifts a fast sweep higher, the more the higher its ratio', () => {
    const heights = [0, 0.15, 0.3, 0.6].map((ratio) => sweep(ratio).peak_height_m);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    // Not a nuance: an experiment on this model saw inches turn into a foot.
    expect(heights[2] - heights[0]).toBeGreaterThan(0.1);
  });

  test('leaves a slow drag on the bottom', () => {
    const slow = simulate({
      water: { depth_m: 6 },
      line: { material: 'fluorocarbon', diameter_m: 0.00033 },
      bait: { mass_kg: 0.0142, lift_to_drag: 0.4 },
      start: { bait_x_m: 24, slack_m: 0.05 },
      move: { kind: 'sweep', from_deg: 0, to_deg: 30, duration_s: 4 }
    });
    expect(slow.peak_height_m).toBe(0);
  });

  test('halving the step changes the height by no more than the step’s own error', () => {
    const at = (step_s: number) =>
      simulate({
        water: { depth_m: 6 },
        line: { material: 'fluorocarbon', diameter_m: 0.00033 },
        bait: { mass_kg: 0.0142, lift_to_drag: 0.4 },
        start: { bait_x_m: 24, slack_m: 0.05 },
        move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 0.6 },
        hold_s: 3,
        numerics: { step_s, segments: 20 }
      }).peak_height_m;
    const [coarse, fine, finest] = [at(2.5e-3), at(1.25e-3), at(3.125e-4)];
    // Second order: a quarter of the error at half the step, here at least well below half of it.
    expect(Math.abs(fine - finest)).toBeLessThan(0.6 * Math.abs(coarse - finest) + 1e-4);
  });
});
