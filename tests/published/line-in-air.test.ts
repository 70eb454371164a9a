import { describe, expect, test } from 'vitest';
import { cylinderDragCoefficient, GRAVITY_M_S2 } from '../../src/lib/model';
import { baitWith, holdFor, lineWith, NO_BOTTOM, planeUnderBait, rigOf } from './rig';

/**
 * A dry line in moving air, against closed forms of a cable under the drag of a cylinder across the flow.
 * The air's force on a length is ½ρ Cd d w², w the speed of the air across it relative to the line:
 * a line that runs before the wind feels none.
 */
const AIR_KG_M3 = 1.225; // ISO 2533 at 15 °C
const CYLINDER = 1.15;
const DIAMETER_M = 0.00033;
const airLoad_N_m = (w_m_s: number) => 0.5 * AIR_KG_M3 * CYLINDER * DIAMETER_M * w_m_s ** 2;

const lineOf = (density_kg_m3: number) =>
  lineWith({ segments: 40, diameter_m: DIAMETER_M, density_kg_m3, youngs_modulus_Pa: 2.5e9 });
const weight_N_m = (density_kg_m3: number) =>
  density_kg_m3 * GRAVITY_M_S2 * (Math.PI / 4) * DIAMETER_M ** 2;

// Air at 15 °C has 1.48e-5 m²/s (ISO 2533): a 0.33 mm line in 4 to 15 m/s is at Re 90 to 330. The curve is
// the model's fit to Wieselsberger 1922 and others; a fifth is what it varies by over these winds.
test.each([4, 8, 15])('one coefficient stands for the cylinder’s curve at %d m/s', (w_m_s) => {
  const curve = cylinderDragCoefficient((w_m_s * DIAMETER_M) / 1.48e-5);
  expect(Math.abs(CYLINDER / curve - 1)).toBeLessThan(0.2);
});

test.each([4, 8])('a taut dry line bows across a wind of %d m/s by q L²/8T', (wind_m_s) => {
  // Irvine, Cable Structures: the parabola of small sag; here 1 to 4 % of the span, so right to 0.5 %.
  const span_m = 6;
  const foot = { x: 0, z: 0.5 };
  const anchor = baitWith({ mass_kg: 1, weightInWater_N: 1e4 });
  const ends = [planeUnderBait(foot, 100), { x: 0, z: 0.5 + span_m }, foot] as const;
  const rig = rigOf(lineOf(1), anchor, ...ends, span_m * 0.9999, true, wind_m_s);
  rig.solver.settling_N_s_m = 1e-4;
  holdFor(rig, 20, 0.005);
  const sag = Math.max(...rig.state.x);
  const exact = (airLoad_N_m(wind_m_s) * span_m ** 2) / (8 * rig.solver.tensionNow(20));
  expect(sag / span_m).toBeGreaterThan(0.005);
  expect(Math.abs(sag / exact - 1)).toBeLessThan(0.005);
});

describe('a dry line that hangs from a moving tip', () => {
  const DENSITY_KG_M3 = 1140;
  /** Sine of the angle off the vertical at which it trails, positive downwind. */
  const trailing = (wind_m_s: number, tip_m_s: number): number => {
    const tip = { x: 0, z: 6 };
    const end = { x: 0, z: 1 };
    const free = baitWith({ mass_kg: 1e-9, weightInWater_N: 0 });
    const rig = rigOf(lineOf(DENSITY_KG_M3), free, NO_BOTTOM, tip, end, 5, false, wind_m_s);
    const step_s = 0.005;
    for (let t = step_s; t < 30; t += step_s) {
      const eased = t < 10 ? (t * t) / 20 : t - 5;
      rig.solver.step(step_s, { x: tip_m_s * eased, z: tip.z });
    }
    const { x, z } = rig.state;
    return (x[30] - x[10]) / Math.hypot(x[30] - x[10], z[30] - z[10]);
  };
  /** Weight across it against the air's force across it: w sin θ = ½ρ Cd d r² cos² θ, straight throughout. */
  const exact = (r_m_s: number): number => {
    const ratio = (airLoad_N_m(r_m_s) * Math.sign(r_m_s)) / weight_N_m(DENSITY_KG_M3);
    return (Math.sqrt(1 + 4 * ratio * ratio) - 1) / (2 * ratio);
  };

  // The critical angle of a towed cable (Hoerner, Fluid-Dynamic Drag, 1965; from memory), at a relative 2 m/s.
  test.each([
    [2, 0],
    [0, -2],
    [5, 3],
    [-1, 1]
  ])('in a wind of %d m/s from a tip at %d m/s trails by their difference', (wind, tip) => {
    // Nodes at the ends bear half a piece: the middle half of the line is straight to a part in a thousand.
    expect(Math.abs(trailing(wind, tip) - exact(wind - tip))).toBeLessThan(2e-3);
  });

  test('hangs straight down when it goes with the wind', () => {
    // A swing left by the start dies with its square: a hundredth of what the wind would hold it at (0.67).
    expect(exact(3)).toBeGreaterThan(0.6);
    expect(Math.abs(trailing(3, 3))).toBeLessThan(0.01);
  });
});

test('a dry line held level falls through still air at its own fall speed: w = ½ρ Cd d v²', () => {
  // Light as no line is, so that it has got there before its ends are felt in the middle.
  const density = 20;
  const far = { x: 19.9, z: 9 };
  const anchor = baitWith({ mass_kg: 1, weightInWater_N: 1e4 });
  const ends = [planeUnderBait(far, 100), { x: 0, z: 9 }, far] as const;
  const rig = rigOf(lineOf(density), anchor, ...ends, 20);
  holdFor(rig, 0.5, 0.001);
  const exact = Math.sqrt((2 * weight_N_m(density)) / (AIR_KG_M3 * CYLINDER * DIAMETER_M));
  expect(Math.abs(-rig.state.vz[20] / exact - 1)).toBeLessThan(2e-3);
});
