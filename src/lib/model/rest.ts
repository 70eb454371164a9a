import { NO_LOAD } from './external-load';
import type { LineSolver } from './line-solver';
import type { Point } from './tip-path';

/**
 * Brings line and bait to rest before anything moves. The laid line is at rest, or near it, with the
 * bait held; let go, a line that pulls harder than the bottom holds draws the bait in until it does not.
 */

/** Steps of a line that only settles, s: nothing is fast. */
const STEP_S = 0.02;
/**
 * Slower than this everywhere is rest, m/s: in a minute it would move by less than a few millimetres.
 * Taken over LOOK_S, since a node on the bottom may tremble by hundredths of a millimetre.
 */
const REST_SPEED_M_S = 5e-5;
const LOOK_S = 0.5;
/**
 * Line that settles sinks no faster than this in air, m/s. Undamped, a stiff dry line left to fall snaps
 * between slack and taut for minutes; where it comes to rest does not depend on how fast it got there.
 */
const SETTLING_M_S = 0.5;
/** What still creeps after the longest settling may start, up to this fast, m/s. */
const UNREST_SPEED_M_S = 1e-3;
/** Longest settling, s: a light line that sinks 10 m takes less. */
const LONGEST_S = 400;
/** A bait moved by less has been left where it was put, m. */
export const LEFT_WHERE_PUT_M = 1e-3;

/** Lets line and bait settle, the bait held or free. @returns whether they came to rest */
export function settled(solver: LineSolver, tip: Point, isHeld: boolean): boolean {
  solver.settling_N_s_m = solver.nodeWeight_N / SETTLING_M_S;
  const isAtRest = comesToRest(solver, tip, isHeld);
  solver.settling_N_s_m = 0;
  solver.state.stop();
  return isAtRest;
}

function comesToRest(solver: LineSolver, tip: Point, isPinned: boolean): boolean {
  const load = { ...NO_LOAD, isPinned };
  const { x, z } = solver.state;
  let speed_m_s = Infinity;
  for (let t = 0; t < LONGEST_S; t += LOOK_S) {
    const [beforeX, beforeZ] = [x.slice(), z.slice()];
    for (let u = STEP_S / 2; u < LOOK_S; u += STEP_S) solver.step(STEP_S, tip, load);
    speed_m_s = Math.max(furthest(x, beforeX), furthest(z, beforeZ)) / LOOK_S;
    if (speed_m_s < REST_SPEED_M_S) return true;
  }
  return speed_m_s < UNREST_SPEED_M_S;
}

function furthest(now: Float64Array, before: Float64Array): number {
  let most = 0;
  for (let i = 0; i < now.length; i++) most = Math.max(most, Math.abs(now[i] - before[i]));
  return most;
}
