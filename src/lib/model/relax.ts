import type { Bottom } from './bottom';
import type { Laid } from './laid';
import { LeaningAir } from './leaning-air';
import { LineEquations } from './line-equations';
import { addAir, addBed, addPieces, addRodTip } from './line-forces';
import { meanWeights, type Line } from './line';
import type { RodBend } from './line-solver';
import type { Point } from './tip-path';

/**
 * Lets a line between two held ends come to rest: floating on the surface, hanging, or lying on a
 * bottom of any shape, where `restingLine` (which walks up from a flat bottom) has no answer.
 *
 * Pseudo-transient continuation (Kelley & Keyes 1998): the nodes creep through syrup under the very
 * forces the stepping scheme uses, with implicit steps that grow as the forces die away. Line on the
 * bottom is held up and not along, since its friction fades with its speed (BED_FRICTION_SPEED_M_S): only
 * what needs none stays where it is.
 *
 * A stiff line that turns by δ in a step is pulled by EA δ²/2, which is millions of times its weight, and
 * creeps by micrometres. So it is relaxed as a soft line first, and again each time it is made stiffer.
 */
/** Stiffness to begin with, in weights of the whole line in air: it stretches by some per cent. */
const SOFT_WEIGHTS = 30;
/** Each stage is so much stiffer than the one before; where that finds no rest, so much. */
export const STIFFER = 3;
export const GENTLY_STIFFER = 1.5;
const ROUNDS_OF_A_STAGE = 600;
/** A stage is done when no node is pulled by more than this share of its own weight in air. */
const STAGE_SHARE = 0.02;
/** And the last one, which is rest. */
const REST_SHARE = 1e-6;
/** A node that lands lies this deep in the bottom, m: about what its own weight presses it in. */
const LANDED_M = 1e-5;
/** Furthest a node may creep in a round, m. */
const FURTHEST_M = 0.1;

/** Between what, over what and in what wind a line is laid. */
export interface Laying {
  readonly line: Line;
  readonly bottom: Bottom;
  readonly rod: RodBend;
  /** Where the stiff rod's tip is; a line from a rod that bends begins where that gives to. */
  readonly tip: Point;
  /** Wind along x. */
  readonly wind_m_s: number;
}

const STILL: Point = { x: 0, z: 0 };

/**
 * Changes `x_m` and `z_m` in place; the bait stays, and the tip of a stiff rod.
 * @returns the largest pull left on a node, as a share of its weight in air: REST_SHARE is rest
 */
export function relax(laying: Laying, laid: Laid, stiffer = STIFFER): number {
  const { line } = laying;
  const weight_N = meanWeights(line).inAir_N_m * laid.pieceLength_m;
  const stiffest_N = Math.max(...line.axialStiffness_N);
  for (let soft_N = SOFT_WEIGHTS * weight_N * line.segments; ; soft_N *= stiffer) {
    const axialStiffness_N = line.axialStiffness_N.map((one) => Math.min(one, soft_N));
    const isLast = soft_N >= stiffest_N;
    const limit_N = (isLast ? REST_SHARE : STAGE_SHARE) * weight_N;
    const softened = { ...laying, line: { ...line, axialStiffness_N } };
    const left_N = creep(softened, laid, isLast ? 1 : soft_N / stiffest_N, limit_N);
    if (isLast) return left_N / weight_N;
  }
}

/** Until no node is pulled by more than `limit_N`. @returns the pull that is left, N */
function creep(
  laying: Laying,
  { x_m, z_m, pieceLength_m }: Laid,
  bedShare: number,
  limit_N: number
): number {
  const { line, bottom, rod, tip, wind_m_s } = laying;
  const eq = new LineEquations(x_m.length);
  const air = new LeaningAir(eq);
  const last = x_m.length - 1;
  const first = rod ? 0 : 1;
  // Time unit: the syrup is such that a node sinks FURTHEST_M in one under its own weight in air.
  const syrup = (meanWeights(line).inAir_N_m * pieceLength_m) / FURTHEST_M;
  let gamma = 1;
  let before = Infinity;
  for (let round = 0; round < ROUNDS_OF_A_STAGE; round++) {
    lineariseAt(eq, x_m, z_m, syrup);
    if (rod) addRodTip(eq, rod, tip, STILL, gamma);
    addPieces(eq, line, pieceLength_m, gamma);
    addAir(eq, line, pieceLength_m, wind_m_s);
    addBed(eq, bottom, pieceLength_m, gamma, bedShare);
    const pull = largest(eq, first, last);
    if (pull < limit_N) return pull;
    air.take(line, pieceLength_m, wind_m_s);
    air.solve(first, gamma);
    const share = Math.min(1, FURTHEST_M / (gamma * largest(eq, first, last)));
    for (let i = first; i < last; i++) {
      x_m[i] += share * gamma * eq.rx[i];
      z_m[i] += share * gamma * eq.rz[i];
      landOn(bottom, eq, i, x_m, z_m);
    }
    const growth = Math.min(Math.max(before / pull, 0.5), 2);
    gamma = Math.min(Math.max(gamma * growth, 0.01), 1e6);
    before = pull;
  }
  return before;
}

/**
 * A node that was above the bottom was linearised without it: it comes down on it and not through, or
 * it would be thrown up again in the next round and never come to rest.
 */
function landOn(
  bottom: Bottom,
  { px, pz, bait }: LineEquations,
  i: number,
  x: Float64Array,
  z: Float64Array
): void {
  if (z[i] >= bottom.highest_m || pz[i] < bottom.evenedBedAt(px[i], bait)) return;
  z[i] = Math.max(z[i], bottom.evenedBedAt(x[i], bait) - LANDED_M);
}

function lineariseAt(eq: LineEquations, x: Float64Array, z: Float64Array, syrup: number): void {
  eq.px.set(x);
  eq.pz.set(z);
  for (const zero of [eq.pvx, eq.pvz, eq.rx, eq.rz, eq.dxz]) zero.fill(0);
  eq.dxx.fill(syrup);
  eq.dzz.fill(syrup);
}

function largest({ rx, rz }: LineEquations, first: number, last: number): number {
  let most = 0;
  for (let i = first; i < last; i++) most = Math.max(most, Math.abs(rx[i]), Math.abs(rz[i]));
  return most;
}
