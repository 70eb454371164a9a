import { meanWeights, wetShare, type Line } from './line';
import type { Point } from './tip-path';

/**
 * The line at rest between tip and bait: exactly the shape that the stepping scheme holds still.
 *
 * Walking up from the bait, the pull (H, V) of each piece is known: H is the same everywhere, V grows
 * by the weight of each node passed. A piece of unstretched length l has length l (1 + T/EA) and lies
 * along its pull. Where V would be negative the line lies on the bottom, which carries the weight
 * until V is positive again. What is left is to find H and the V at the bait (negative: how much of
 * the line's weight the bottom carries) for which the walk ends at the tip.
 * For many pieces this is the elastic catenary (Irvine, *Cable Structures*), with two weights.
 */
export interface RestingLine {
  /** From the tip (0) to the bait. */
  readonly x_m: Float64Array;
  readonly z_m: Float64Array;
  readonly pieceLength_m: number;
  readonly horizontal_N: number;
}

export type LineLength = { unstretched_m: number } | { horizontal_tension_N: number };

/** Newton stops when the walk ends this close to the tip, m: far below the accuracy asked of travel. */
const CLOSURE_M = 1e-10;
/** And this is still taken for an answer, m. */
const ACCEPTED_M = 1e-7;
const MAX_ITERATIONS = 200;

/** Null where the walk finds no way (floating line, line in heaps): see relax.ts for those. */
export function restingLine(
  line: Line,
  tip: Point,
  bait: Point,
  length: LineLength
): RestingLine | null {
  const side = Math.sign(bait.x - tip.x) || 1;
  const span = Math.max(Math.abs(bait.x - tip.x), 1e-6);
  const chord = Math.hypot(span, tip.z - bait.z);
  const walk = new Walk(line, span, tip.z, bait.z);
  const guess = firstGuess(line, chord, span, length);
  // One unknown is positive, so its logarithm is solved for; the other is the line's slope at the bait.
  const unknowns: Unknowns = {
    log: Math.log('unstretched_m' in length ? guess.horizontal_N : guess.piece_m),
    slope:
      (tip.z - bait.z) / span - (0.5 * meanWeights(line).inWater_N_m * chord) / guess.horizontal_N
  };
  const pull = (u: Unknowns) =>
    'unstretched_m' in length ? Math.exp(u.log) : length.horizontal_tension_N;
  const piece = (u: Unknowns) =>
    'unstretched_m' in length ? length.unstretched_m / line.segments : Math.exp(u.log);
  const miss = solve((u) => walk.to(pull(u), pull(u) * u.slope, piece(u)), unknowns);
  if (!(miss < ACCEPTED_M)) return null;
  walk.to(pull(unknowns), pull(unknowns) * unknowns.slope, piece(unknowns));
  return {
    x_m: walk.x.map((x) => bait.x - side * x),
    z_m: walk.z.slice(),
    pieceLength_m: piece(unknowns),
    horizontal_N: pull(unknowns)
  };
}

/** A shallow parabola's pull for the given length, with about a tenth of the line in the air. */
function firstGuess(line: Line, chord: number, span: number, length: LineLength) {
  if ('horizontal_tension_N' in length) {
    return { horizontal_N: length.horizontal_tension_N, piece_m: chord / line.segments };
  }
  const { inWater_N_m, inAir_N_m } = meanWeights(line);
  const weight = Math.abs(inWater_N_m) + 0.1 * inAir_N_m;
  const stretch = (0.01 * weight * chord * chord) / line.axialStiffness_N[0];
  const excess = Math.max((length.unstretched_m - chord + stretch) / chord, 1e-7);
  return {
    horizontal_N: (weight * span * span) / chord / Math.sqrt(24 * excess),
    piece_m: length.unstretched_m / line.segments
  };
}

interface Unknowns {
  log: number;
  slope: number;
}

/** Each round shrinks the error by the ratio of a piece's weight to its pull, a few per cent. */
const SURFACE_ROUNDS = 12;

function weightOf(line: Line, i: number, length_m: number, wet: number): number {
  return length_m * (wet * line.weightInWater_N_m[i] + (1 - wet) * line.weightInAir_N_m[i]);
}

interface Miss {
  dx: number;
  dz: number;
}

class Walk {
  readonly x: Float64Array;
  readonly z: Float64Array;

  constructor(
    private readonly line: Line,
    private readonly span_m: number,
    private readonly tipZ_m: number,
    private readonly baitZ_m: number
  ) {
    this.x = new Float64Array(line.segments + 1);
    this.z = new Float64Array(line.segments + 1);
  }

  /** Lays the line up from the bait; x counts from the bait towards the tip. Returns tip error. */
  to(horizontal_N: number, vertical_N: number, pieceLength_m: number): Miss {
    const { line, x, z } = this;
    const n = line.segments;
    let vertical = vertical_N;
    x[n] = 0;
    z[n] = this.baitZ_m;
    for (let i = n - 1; i >= 0; i--) {
      const isLying = vertical < 0 && z[i + 1] <= this.baitZ_m;
      const up = isLying ? 0 : vertical;
      this.lay(i, horizontal_N, up, pieceLength_m);
      if (i > 0) vertical += this.nodeWeight(i, horizontal_N, up, pieceLength_m);
    }
    return { dx: x[0] - this.span_m, dz: z[0] - this.tipZ_m };
  }

  private lay(i: number, horizontal_N: number, vertical_N: number, pieceLength_m: number): void {
    const tension = Math.hypot(horizontal_N, vertical_N);
    const stretch = pieceLength_m * (1 / tension + 1 / this.line.axialStiffness_N[i]);
    this.x[i] = this.x[i + 1] + horizontal_N * stretch;
    this.z[i] = this.z[i + 1] + vertical_N * stretch;
  }

  /**
   * Half of the piece below plus half of the piece above. How wet the latter is depends on where it
   * will lie, which depends on this weight: settled by repetition (at the surface only).
   */
  private nodeWeight(i: number, horizontal_N: number, up_N: number, pieceLength_m: number): number {
    const { line, z } = this;
    const half = 0.5 * pieceLength_m;
    const below = wetShare(z[i], z[i + 1]);
    const lower = weightOf(line, i, half, below);
    let above = below;
    for (let round = 0; round < SURFACE_ROUNDS; round++) {
      const weight = lower + weightOf(line, i - 1, half, above);
      this.lay(i - 1, horizontal_N, up_N + weight, pieceLength_m);
      const share = wetShare(z[i - 1], z[i]);
      if (share === above) break;
      above = share;
    }
    return lower + weightOf(line, i - 1, half, above);
  }
}

/**
 * Newton's method with difference quotients, halving steps that do not help. Changes `unknowns`;
 * returns how far from the tip the walk still ends, m.
 */
function solve(end: (unknowns: Unknowns) => Miss, unknowns: Unknowns): number {
  let miss = end(unknowns);
  let error = Math.hypot(miss.dx, miss.dz);
  for (let i = 0; i < MAX_ITERATIONS && error > CLOSURE_M; i++) {
    const step = newtonStep(end, unknowns, miss);
    if (!step) break;
    let share = 1;
    for (; share > 1e-6; share /= 2) {
      const trial = {
        log: unknowns.log + share * step.log,
        slope: unknowns.slope + share * step.slope
      };
      const next = end(trial);
      const nextError = Math.hypot(next.dx, next.dz);
      if (nextError >= error) continue;
      Object.assign(unknowns, trial);
      miss = next;
      error = nextError;
      break;
    }
    if (share <= 1e-6) break;
  }
  return error;
}

function newtonStep(
  end: (unknowns: Unknowns) => Miss,
  { log, slope }: Unknowns,
  miss: Miss
): Unknowns | null {
  const dLog = 1e-6;
  const dSlope = 1e-6;
  const byLog = end({ log: log + dLog, slope });
  const bySlope = end({ log, slope: slope + dSlope });
  const a = (byLog.dx - miss.dx) / dLog;
  const c = (byLog.dz - miss.dz) / dLog;
  const b = (bySlope.dx - miss.dx) / dSlope;
  const d = (bySlope.dz - miss.dz) / dSlope;
  const det = a * d - b * c;
  if (det === 0 || !Number.isFinite(det)) return null;
  return {
    log: Math.max(-1, Math.min(1, (-d * miss.dx + b * miss.dz) / det)),
    slope: (c * miss.dx - a * miss.dz) / det
  };
}
