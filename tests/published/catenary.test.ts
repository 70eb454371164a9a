import { describe, expect, test } from 'vitest';
import { restingLine } from '../../src/lib/model/equilibrium';
import { pullOf, type Line } from '../../src/lib/model/line';
import { relax } from '../../src/lib/model/relax';
import { lineWith, NO_BOTTOM } from './rig';

function heavyLine(weight_N_m: number, EA_N: number, segments: number): Line {
  const line = lineWith({
    segments,
    diameter_m: 0.001,
    density_kg_m3: 1000,
    youngs_modulus_Pa: 1e9
  });
  const everywhere = (value: number) => new Float64Array(segments).fill(value);
  return {
    ...line,
    axialStiffness_N: everywhere(EA_N),
    weightInAir_N_m: everywhere(weight_N_m),
    weightInWater_N_m: everywhere(weight_N_m)
  };
}

/** Second-order extrapolation to infinitely many pieces from N and 2N. */
function extrapolated(value: (segments: number) => number, segments: number): number {
  return (4 * value(2 * segments) - value(segments)) / 3;
}

describe('the line at rest', () => {
  // Two weights: 0.33 mm, 1780 kg/m³, 2.5 GPa, from (0, 1.2) to (24, −4), 1.002 × chord long. The
  // piecewise elastic catenary (Irvine, Cable Structures) gives these four numbers.
  describe('hanging from air into water', () => {
    const tip = { x: 0, z: 1.2 };
    const bait = { x: 24, z: -4 };
    const chord = Math.hypot(24, 5.2);
    const at = (segments: number) => {
      const line = lineWith({
        segments,
        diameter_m: 0.00033,
        density_kg_m3: 1780,
        youngs_modulus_Pa: 2.5e9
      });
      const resting = restingLine(line, tip, bait, { unstretched_m: 1.002 * chord })!;
      const pull = (i: number) =>
        pullOf(
          line,
          i,
          Math.hypot(resting.x_m[i + 1] - resting.x_m[i], resting.z_m[i + 1] - resting.z_m[i]),
          resting.pieceLength_m
        );
      // Ends of the line proper: half a piece beyond the middle of the first and last piece.
      const sag = Math.max(
        ...Array.from(resting.x_m, (x, i) => 1.2 - (5.2 / 24) * x - resting.z_m[i])
      );
      return {
        horizontal: resting.horizontal_N,
        tip: 1.5 * pull(0) - 0.5 * pull(1),
        bait: 1.5 * pull(segments - 1) - 0.5 * pull(segments - 2),
        sag
      };
    };
    test.each([
      ['horizontal', 0.0703, 5e-6],
      ['tip', 0.07506, 1e-5],
      ['bait', 0.07065, 1e-5],
      ['sag', 0.7277, 1e-4]
    ] as const)('has the published %s', (name, published, lastDigit) => {
      expect(Math.abs(at(640)[name] - published)).toBeLessThan(2 * lastDigit);
    });
    test('is right to 0.1 % already with the 40 pieces of every run', () => {
      expect(Math.abs(at(40).horizontal / 0.0703 - 1)).toBeLessThan(1e-3);
    });
  });

  // Tests of a public mooring code: x 400, z 200, L 500, EA 7.51e12, w 800, friction 0.
  describe('partly lying on the bottom', () => {
    const lie = (segments: number) =>
      restingLine(
        heavyLine(800, 7.51e12, segments),
        { x: 0, z: -1 },
        { x: 400, z: -201 },
        { unstretched_m: 500 }
      )!;
    test('has the published horizontal pull', () => {
      const H = extrapolated((n) => lie(n).horizontal_N, 320);
      expect(Math.abs(H / 96643.428 - 1)).toBeLessThan(1e-4);
    });
    test('lies as far as published', () => {
      const { z_m, pieceLength_m } = lie(640);
      const lying = z_m.filter((z) => z < -201 + 1e-9).length - 1;
      expect(Math.abs(lying * pieceLength_m - 202.810306)).toBeLessThan(1.5 * pieceLength_m);
    });
    test('hangs by its free part alone: V at the tip is its weight, 237751.755', () => {
      const { x_m, z_m, horizontal_N } = lie(640);
      const top = (z_m[0] - z_m[1]) / (x_m[1] - x_m[0]);
      const V = horizontal_N * top + 0.5 * 800 * (500 / 640);
      expect(Math.abs(V / 237751.755 - 1)).toBeLessThan(1e-4);
    });
  });

  test('sags 0.8803 m and pulls 0.03750 N at its ends: 20 m of line, 19.9 m apart', () => {
    const line = lineWith({
      segments: 320,
      diameter_m: 0.00033,
      density_kg_m3: 1780,
      youngs_modulus_Pa: 2.5e9
    });
    const n = line.segments;
    const x = Float64Array.from({ length: n + 1 }, (_, i) => (19.9 * i) / n);
    const z = new Float64Array(n + 1).fill(-0.1);
    const laying = { line, bottom: NO_BOTTOM, rod: null, tip: { x: 0, z: -0.1 }, wind_m_s: 0 };
    const left = relax(laying, { x_m: x, z_m: z, pieceLength_m: 20 / n });
    const pull = pullOf(line, 0, Math.hypot(x[1] - x[0], z[1] - z[0]), 20 / n);
    // A share of a node's own weight: nothing is left to move it.
    expect(left).toBeLessThan(1e-5);
    expect(Math.abs(pull - 0.0375)).toBeLessThan(1e-5);
    expect(Math.abs(-0.1 - Math.min(...z) - 0.8803)).toBeLessThan(1e-4);
  });
});
