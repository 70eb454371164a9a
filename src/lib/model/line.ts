import { normalDragOf, type NormalDrag } from './drag';
import { lineProperties, type LineProperties, type Setup } from './scenario';
import { GRAVITY_M_S2 } from './units';
import type { Water } from './water';

/**
 * The line cut into equal pieces, tip (0) to bait: what each piece weighs, how it stretches and how
 * water and wind drag it. Pieces differ where a leader is tied on; one list entry a piece.
 */
export interface Line {
  readonly segments: number;
  /** The piece with the leader's knot in it; null without a leader. */
  readonly knotPiece: number | null;
  readonly diameter_m: Float64Array;
  /** Force at 100 % stretch, N. */
  readonly axialStiffness_N: Float64Array;
  readonly massPerLength_kg_m: Float64Array;
  readonly weightInAir_N_m: Float64Array;
  /** Negative for a line that floats. */
  readonly weightInWater_N_m: Float64Array;
  readonly normalDrag: readonly NormalDrag[];
  /** Tangential force per length over speed squared, N·s²/m³ (on π·d·length). */
  readonly tangentialDrag: Float64Array;
}

/** `length_m`: of the whole line, which decides how many pieces a leader takes up. */
export function lineOf(setup: Setup, water: Water, length_m: number): Line {
  const segments = setup.numerics.segments;
  const { leader } = setup.line;
  const main = material(lineProperties(setup.line), water);
  if (!leader) return lineOfPieces(segments, () => main);
  const end = material(lineProperties(leader), water);
  const leaderPieces = Math.min((leader.length_m / length_m) * segments, segments);
  const knotPiece = Math.min(Math.floor(segments - leaderPieces), segments - 1);
  const pieceAt = (i: number) => {
    const share = Math.min(Math.max(i + 1 - (segments - leaderPieces), 0), 1);
    return share === 0 ? main : share === 1 ? end : joined(main, end, share);
  };
  return lineOfPieces(segments, pieceAt, knotPiece);
}

interface Material {
  diameter_m: number;
  axialStiffness_N: number;
  massPerLength_kg_m: number;
  weightInWater_N_m: number;
  normalDrag: NormalDrag;
  tangentialDrag: number;
}

export function material(line: LineProperties, water: Water): Material {
  const area = (Math.PI / 4) * line.diameter_m ** 2;
  return {
    diameter_m: line.diameter_m,
    axialStiffness_N: line.youngs_modulus_Pa * area,
    massPerLength_kg_m: line.density_kg_m3 * area,
    weightInWater_N_m: (line.density_kg_m3 - water.density_kg_m3) * area * GRAVITY_M_S2,
    normalDrag: normalDragOf(
      line.normal_drag,
      line.diameter_m,
      water.density_kg_m3,
      water.viscosity_Pa_s
    ),
    tangentialDrag: 0.5 * water.density_kg_m3 * Math.PI * line.diameter_m * line.tangential_drag
  };
}

/** A piece with the knot in it, `share` of it leader: springs in a row, weights side by side. */
function joined(main: Material, end: Material, share: number): Material {
  const mix = (a: number, b: number) => a + share * (b - a);
  return {
    diameter_m: mix(main.diameter_m, end.diameter_m),
    axialStiffness_N: 1 / mix(1 / main.axialStiffness_N, 1 / end.axialStiffness_N),
    massPerLength_kg_m: mix(main.massPerLength_kg_m, end.massPerLength_kg_m),
    weightInWater_N_m: mix(main.weightInWater_N_m, end.weightInWater_N_m),
    normalDrag: share < 0.5 ? main.normalDrag : end.normalDrag,
    tangentialDrag: mix(main.tangentialDrag, end.tangentialDrag)
  };
}

export function lineOfPieces(
  segments: number,
  pieceAt: (i: number) => Material,
  knotPiece: number | null = null
): Line {
  const pieces = Array.from({ length: segments }, (_, i) => pieceAt(i));
  const list = (value: (piece: Material) => number) => Float64Array.from(pieces, value);
  return {
    segments,
    knotPiece,
    diameter_m: list((piece) => piece.diameter_m),
    axialStiffness_N: list((piece) => piece.axialStiffness_N),
    massPerLength_kg_m: list((piece) => piece.massPerLength_kg_m),
    weightInAir_N_m: list((piece) => piece.massPerLength_kg_m * GRAVITY_M_S2),
    weightInWater_N_m: list((piece) => piece.weightInWater_N_m),
    normalDrag: pieces.map((piece) => piece.normalDrag),
    tangentialDrag: list((piece) => piece.tangentialDrag)
  };
}

/** Weight of a metre in water and in air, averaged over the line, N/m. */
export function meanWeights(line: Line): { inWater_N_m: number; inAir_N_m: number } {
  const mean = (list: Float64Array) => list.reduce((sum, value) => sum + value, 0) / line.segments;
  return { inWater_N_m: mean(line.weightInWater_N_m), inAir_N_m: mean(line.weightInAir_N_m) };
}

/** Pull of piece `i` when it is `length_m` long, N. */
export function pullOf(line: Line, i: number, length_m: number, pieceLength_m: number): number {
  return Math.max(0, line.axialStiffness_N[i] * (length_m / pieceLength_m - 1));
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
