import { tabulateNormalDrag, type NormalDrag } from './drag';
import { lineProperties, type Setup } from './scenario';
import { GRAVITY_M_S2 } from './units';
import type { Water } from './water';

/** The line cut into equal pieces: what each piece weighs, how it stretches and how water drags it. */
export interface Line {
  readonly segments: number;
  readonly diameter_m: number;
  /** Force at 100 % stretch, N. */
  readonly axialStiffness_N: number;
  readonly massPerLength_kg_m: number;
  readonly weightInAir_N_m: number;
  /** Negative for a line that floats. */
  readonly weightInWater_N_m: number;
  readonly normalDrag: NormalDrag;
  /** Tangential force per length over speed squared, N·s²/m³ (on π·d·length). */
  readonly tangentialDrag: number;
}

export function lineOf(setup: Setup, water: Water): Line {
  const line = lineProperties(setup.line);
  const area = (Math.PI / 4) * line.diameter_m ** 2;
  return {
    segments: setup.numerics.segments,
    diameter_m: line.diameter_m,
    axialStiffness_N: line.youngs_modulus_Pa * area,
    massPerLength_kg_m: line.density_kg_m3 * area,
    weightInAir_N_m: line.density_kg_m3 * area * GRAVITY_M_S2,
    weightInWater_N_m: (line.density_kg_m3 - water.density_kg_m3) * area * GRAVITY_M_S2,
    normalDrag: tabulateNormalDrag(
      line.normal_drag,
      line.diameter_m,
      water.density_kg_m3,
      water.viscosity_Pa_s
    ),
    tangentialDrag: 0.5 * water.density_kg_m3 * Math.PI * line.diameter_m * line.tangential_drag
  };
}

/**
 * Water does not end in a knife's edge for a line lying in it: half the height over which a piece
 * goes from dry to wet, m. Without it a floating line would have no place to rest.
 */
const SURFACE_HALF_M = 0.002;

/** Heights between which a piece from `za` to `zb` is partly wet: see `wetShare`. */
export function surfaceSpan(za: number, zb: number): number {
  return Math.abs(za - zb) + 2 * SURFACE_HALF_M;
}

/** Share of the piece from height `za` to `zb` that is under water. */
export function wetShare(za: number, zb: number): number {
  const low = Math.min(za, zb) - SURFACE_HALF_M;
  const high = Math.max(za, zb) + SURFACE_HALF_M;
  if (high <= 0) return 1;
  if (low >= 0) return 0;
  return -low / (high - low);
}
