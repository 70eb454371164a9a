import type { Bottom } from './bottom';
import { restingLine, type LineLength } from './equilibrium';
import type { Laid } from './laid';
import { overBed } from './over-bed';
import { GENTLY_STIFFER, relax, STIFFER, type Laying } from './relax';
import { ScenarioError } from './scenario';
import type { Point } from './tip-path';

/**
 * The line at rest, the bait held. On level ground in still air from a stiff rod the walk of
 * equilibrium.ts is the answer; else the walk, or a line drawn tight over what stands between, relaxes.
 * Where that finds no rest (line in heaps) it is left to settle by its motion: see rest.ts.
 */
export function lineAtRest(laying: Laying, bait: Point, length: LineLength): Laid {
  const { line, bottom, rod, tip, wind_m_s } = laying;
  const walked = restingLine(line, tip, bait, length);
  if (!walked && 'horizontal_tension_N' in length) {
    throw new ScenarioError(
      'start.horizontal_tension_N',
      length.horizontal_tension_N,
      'no line at rest between tip and bait has this tension'
    );
  }
  const isWalkRest = wind_m_s === 0 && rod === null && walked && liesOn(bottom, walked, bait);
  if (walked && isWalkRest) return walked;
  const pieceLength_m = walked
    ? walked.pieceLength_m
    : 'unstretched_m' in length
      ? length.unstretched_m / line.segments
      : NaN;
  const taut = overBed(line, bottom, tip, bait);
  const lying = walked ? liftedOn(bottom, walked, bait) : taut;
  for (const [{ x_m, z_m }, stiffer] of [
    [taut, STIFFER],
    [lying, STIFFER],
    [taut, GENTLY_STIFFER]
  ] as const) {
    const laid = { x_m: x_m.slice(), z_m: z_m.slice(), pieceLength_m };
    if (relax(laying, laid, stiffer) < NEAR_SHARE) return laid;
  }
  return { ...lying, pieceLength_m };
}

/** A relaxation that leaves less than this share of a node's weight has found a rest, or is beside it. */
const NEAR_SHARE = 0.01;

/** As near as this a line that was walked over level ground lies on the bottom there is, m. */
const LIES_M = 1e-6;

/** Whether a line that was walked over level ground at the bait's depth fits this bottom. */
function liesOn(bottom: Bottom, { x_m, z_m }: Laid, bait: Point): boolean {
  for (let i = 1; i < x_m.length - 1; i++) {
    const bed = bottom.bedAt(x_m[i], bait);
    if (bed > z_m[i] + LIES_M) return false;
    if (z_m[i] <= bait.z && bed < z_m[i] - LIES_M) return false;
  }
  return true;
}

/** The line, raised where the bottom stands higher than the level ground that it was walked over. */
function liftedOn(bottom: Bottom, { x_m, z_m }: Laid, bait: Point): Pick<Laid, 'x_m' | 'z_m'> {
  const last = x_m.length - 1;
  return {
    x_m,
    z_m: z_m.map((z, i) => (i === last ? z : Math.max(z, bottom.bedAt(x_m[i], bait))))
  };
}
