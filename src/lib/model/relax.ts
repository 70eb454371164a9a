import type { Bottom } from './bottom';
import { LineEquations } from './line-equations';
import { addBed, addPieces, addWind } from './line-forces';
import { meanWeights, type Line } from './line';

/**
 * Lets a line between two held ends come to rest: floating on the surface, hanging, or lying on a
 * bottom of any shape, where `restingLine` (which walks up from a flat bottom) has no answer.
 *
 * Pseudo-transient continuation (Kelley & Keyes 1998): the nodes creep through syrup under the very
 * forces the stepping scheme uses, with implicit steps that grow as the forces die away.
 */
const MAX_ROUNDS = 4000;
/** Done when no node is pulled by more than this share of its own weight in air. */
const REST_SHARE = 1e-6;
/** Furthest a node may creep in a round, m. */
const FURTHEST_M = 0.1;

/** Changes `x` and `z` (tip first, bait last) in place; the ends stay. Returns the pull left, N. */
export function relax(
  x: Float64Array,
  z: Float64Array,
  line: Line,
  bottom: Bottom,
  pieceLength_m: number,
  wind_m_s = 0
): number {
  const eq = new LineEquations(x.length);
  const last = x.length - 1;
  const weight = meanWeights(line).inAir_N_m * pieceLength_m;
  // Time unit: the syrup is such that a node sinks FURTHEST_M in one under its own weight in air.
  const syrup = weight / FURTHEST_M;
  const withoutBed = new Float64Array(x.length);
  let gamma = 1;
  let before = Infinity;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    lineariseAt(eq, x, z, syrup);
    addPieces(eq, line, pieceLength_m, gamma);
    if (wind_m_s !== 0) addWind(eq, line, pieceLength_m, wind_m_s);
    restOnBed(eq, bottom, pieceLength_m, gamma, withoutBed);
    const pull = largest(eq, last);
    if (pull < REST_SHARE * weight) return pull;
    eq.rx[last] = eq.rz[last] = 0;
    eq.eliminate(1);
    eq.rx[last] = eq.rz[last] = 0;
    eq.substitute(1);
    const share = Math.min(1, FURTHEST_M / (gamma * largest(eq, last)));
    for (let i = 1; i < last; i++) {
      x[i] += share * gamma * eq.rx[i];
      z[i] += share * gamma * eq.rz[i];
    }
    gamma = Math.min(Math.max(gamma * Math.min(Math.max(before / pull, 0.5), 2), 0.01), 1e4);
    before = pull;
  }
  return before;
}

function lineariseAt(eq: LineEquations, x: Float64Array, z: Float64Array, syrup: number): void {
  eq.px.set(x);
  eq.pz.set(z);
  for (const zero of [eq.pvx, eq.pvz, eq.rx, eq.rz, eq.dxz]) zero.fill(0);
  eq.dxx.fill(syrup);
  eq.dzz.fill(syrup);
}

/** The bottom holds a node along it as far as friction goes, and leaves only the rest of its pull. */
function restOnBed(
  eq: LineEquations,
  bottom: Bottom,
  pieceLength_m: number,
  gamma: number,
  withoutBed: Float64Array
): void {
  withoutBed.set(eq.rz);
  addBed(eq, bottom, pieceLength_m, gamma);
  for (let i = 1; i < eq.nodes - 1; i++) {
    const hold = bottom.friction * (eq.rz[i] - withoutBed[i]);
    if (hold > 0) eq.rx[i] -= Math.max(-hold, Math.min(hold, eq.rx[i]));
  }
}

function largest({ rx, rz }: LineEquations, last: number): number {
  let most = 0;
  for (let i = 1; i < last; i++) most = Math.max(most, Math.abs(rx[i]), Math.abs(rz[i]));
  return most;
}
