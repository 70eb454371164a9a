import type { Bottom } from './bottom';
import type { Line } from './line';
import type { LineEquations } from './line-equations';
import type { LineState } from './line-state';

/**
 * A step is solved about what was taken to pull and to be borne. Here stands whether its end agrees: the
 * active set of Newton's method. `state` holds x̃, so a node is at x̃ + γ v.
 */

/** Pieces whose pull was taken for slack, or slack for pull, by more than this are solved again, N. */
const SLACK_TOLERANCE_N = 0.01;
/** Nodes taken for clear of the bottom, or for borne by it, are solved again when off by more, m. */
const BED_TOLERANCE_M = 2e-5;

/** Length of piece `i` at the end of the step, m. */
function lengthAtEnd(eq: LineEquations, state: LineState, gamma: number, i: number): number {
  const { pvx, pvz } = eq;
  const { x, z } = state;
  const dx = x[i + 1] - x[i] + gamma * (pvx[i + 1] - pvx[i]);
  const dz = z[i + 1] - z[i] + gamma * (pvz[i + 1] - pvz[i]);
  return Math.sqrt(dx * dx + dz * dz);
}

/** Length of the whole line at the end of the step, m. */
export function wholeLengthAtEnd(eq: LineEquations, state: LineState, gamma: number): number {
  let sum = 0;
  for (let i = 0; i < eq.nodes - 1; i++) sum += lengthAtEnd(eq, state, gamma, i);
  return sum;
}

/**
 * Whether a piece linearised as slack came out pulling, or the other way. One that tightens within
 * the step would otherwise pull a step late, from a stretch it never had, and so make energy.
 */
export function hasSlackFlipped(
  eq: LineEquations,
  state: LineState,
  line: Line,
  pieceLength_m: number,
  gamma: number
): boolean {
  const { axialStiffness_N } = line;
  for (let i = 0; i < eq.nodes - 1; i++) {
    const stretch = lengthAtEnd(eq, state, gamma, i) - pieceLength_m;
    const tolerance = (SLACK_TOLERANCE_N * pieceLength_m) / axialStiffness_N[i];
    if (eq.isTaut[i] === 1 ? stretch < -tolerance : stretch > tolerance) return true;
  }
  return false;
}

/**
 * Whether a node linearised as clear of the bottom came out in it, or one that was borne out of it.
 * One that lands within the step would otherwise be thrown back up by the next.
 */
export function hasBedFlipped(
  eq: LineEquations,
  state: LineState,
  bottom: Bottom,
  gamma: number
): boolean {
  const { pvx, pvz, isBorne, bait } = eq;
  const { x, z } = state;
  const { highest_m } = bottom;
  for (let i = 1; i < eq.nodes - 1; i++) {
    const now_z = z[i] + gamma * pvz[i];
    if (isBorne[i] === 0 && now_z >= highest_m) continue;
    const depth = bottom.evenedBedAt(x[i] + gamma * pvx[i], bait) - now_z;
    if (isBorne[i] === 1 ? depth < -BED_TOLERANCE_M : depth > BED_TOLERANCE_M) return true;
  }
  return false;
}
