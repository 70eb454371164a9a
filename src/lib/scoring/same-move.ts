import { INCH_M, parseSetup, TICK_S, tipPathOf, type Move, type Result } from '../model';
import type { Challenge } from './challenge';
import { BEAT_S, type Correction } from './correction';
import { tipTravel } from './run-measures';
import { tipMotionOf } from './tip-motion';

/** A tip further than this from where it began, or ends, is on its way, m: more than a tremble. */
const ON_ITS_WAY_M = INCH_M / 2;
/** Steps are said in whole inches: a tip that is so near to them on the average makes them, m. */
const ALIKE_M = INCH_M;

/** So much slower is still about that time, where slower still does not do it. */
const ABOUT_PACE = 1.5;

/** Whether the hand's turn, as it would be said, was the solved one: as far, and as slow or slower. */
export function isSameTurn(
  result: Result,
  { tipTravel_m, duration_s, isSlowToo }: Correction
): boolean {
  const isAsFar = Math.abs(tipTravel(result) - tipTravel_m) < INCH_M / 2;
  const { duration_s: taken_s } = tipMotionOf(result);
  const isInTime = taken_s >= duration_s && (isSlowToo || taken_s <= ABOUT_PACE * duration_s);
  return isAsFar && isInTime;
}

/** Whether the tip went as far as the solved turn has it: a hand does not tell an inch. */
export function isAsFarAs({ tipTravel_m }: Correction, result: Result): boolean {
  return Math.abs(tipTravel(result) - tipTravel_m) < INCH_M;
}

/** Whether the hand was slower than the solved turn, by more than is not counted, where slower does not do it. */
export function isSlowerThan(
  { duration_s, tipTravel_m, isSlowToo }: Correction,
  result: Result
): boolean {
  const hand_s = (tipMotionOf(result).duration_s * tipTravel_m) / tipTravel(result);
  return !isSlowToo && hand_s >= duration_s + BEAT_S;
}

/**
 * Whether the hand's tip was where the steps of this move have it, both timed from their first stir, and
 * both as from a boat that stays (see handRun).
 */
export function isSameSteps(setup: Challenge['setup'], { trace }: Result, move: Move): boolean {
  const made = stirring(trace.tip_x_m.map((x, i) => ({ x, z: trace.tip_z_m[i] })));
  const parsed = parseSetup({ ...setup, drift_m_s: 0 });
  const path = tipPathOf(parsed, move);
  const asked = stirring(
    Array.from({ length: Math.ceil(path.duration_s / TICK_S) + 1 }, (_, i) => {
      const point = { x: 0, z: 0 };
      path.at(i * TICK_S, point);
      return point;
    })
  );
  const last = Math.max(made.length, asked.length);
  const apart = Array.from({ length: last }, (_, i) => {
    const [a, b] = [made, asked].map((way) => way[Math.min(i, way.length - 1)]);
    return Math.hypot(a.x - b.x, a.z - b.z);
  });
  return apart.reduce((sum, m) => sum + m, 0) <= ALIKE_M * last;
}

interface Place {
  x: number;
  z: number;
}

/** The tip's way from its start, from its first stir to its last. */
function stirring(all: readonly Place[]): Place[] {
  const [first, end] = [all[0], all[all.length - 1]];
  const isAway = (at: Place, from: Place) =>
    Math.hypot(at.x - from.x, at.z - from.z) > ON_ITS_WAY_M;
  const begin = all.findIndex((at) => isAway(at, first));
  if (begin === -1) return [{ x: 0, z: 0 }];
  let stop = all.length - 1;
  while (stop > begin && !isAway(all[stop], end)) stop--;
  return all.slice(begin, stop + 1).map(({ x, z }) => ({ x: x - first.x, z: z - first.z }));
}
