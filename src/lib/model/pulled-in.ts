import type { Bait } from './bait';
import type { Bottom, Contact } from './bottom';
import { pullOf } from './line';
import { lineAtRest } from './line-at-rest';
import type { Laid } from './laid';
import type { Laying } from './relax';
import type { Point } from './tip-path';

/**
 * A resting line may pull harder than the bottom holds, or the ground may be steeper. Then the bait slides,
 * towards the angler or down, until Coulomb's friction and the line hold it: the place is found by bisection
 * over lines at rest, since a stiff dry line left to do it by itself snaps between slack and taut for minutes.
 */
const FIRST_SLIDE_M = 0.01;
/** The place is found to this, m: less than a bait is put down to. */
const NEAR_M = 1e-5;

/** The line, or where the bait slides the line as it lies once the bait is held. */
export function lineThatHolds(laying: Laying, bait: Bait, place: Point, laid: Laid): Laid {
  const way = slideOf(laying, bait, place, laid);
  if (way === 0) return laid;
  const length = { unstretched_m: laid.pieceLength_m * laying.line.segments };
  const at = (slid_m: number) => {
    const there = restOnBottom(laying.bottom, place.x + way * slid_m);
    const line = lineAtRest(laying, there, length);
    return { line, slides: slideOf(laying, bait, there, line) === way };
  };
  let [low, high] = [0, FIRST_SLIDE_M];
  const furthest = Math.abs(place.x - laying.tip.x) / 2;
  while (at(high).slides && high < furthest) [low, high] = [high, 2 * high];
  while (high - low > NEAR_M) {
    const middle = (low + high) / 2;
    if (at(middle).slides) low = middle;
    else high = middle;
  }
  return at(high).line;
}

/** Which way along x friction on the one surface that the bait lies on lets it slide; 0 where it holds. */
function slideOf({ line, bottom }: Laying, bait: Bait, place: Point, laid: Laid): -1 | 0 | 1 {
  const contacts: Contact[] = [];
  bottom.contactsNear(place.x, place.z, contacts);
  const touching = contacts.filter(({ gap_m }) => gap_m < TOUCHING_M);
  // Wedged between two surfaces it stays; on a stone it finds its own way.
  if (touching.length !== 1 || touching[0].stone >= 0) return 0;
  const [{ nx, nz }] = touching;
  const { x, z } = pullOnBait(line, laid);
  const down = z - bait.weightInWater_N;
  const normal = -(x * nx + down * nz);
  const along = x * nz - down * nx;
  const isHeld = Math.abs(along) <= bottom.friction * Math.max(normal, 0) + bottom.breakout_N;
  return isHeld ? 0 : along > 0 ? 1 : -1;
}

/** Nearer than this the bait lies on a surface, m. */
const TOUCHING_M = 1e-4;

function pullOnBait(line: Laying['line'], { x_m, z_m, pieceLength_m }: Laid): Point {
  const n = x_m.length - 1;
  const dx = x_m[n - 1] - x_m[n];
  const dz = z_m[n - 1] - z_m[n];
  const length = Math.hypot(dx, dz);
  const pull = pullOf(line, n - 1, length, pieceLength_m);
  const half_N = 0.5 * pieceLength_m * line.weightInWater_N_m[n - 1];
  return { x: (pull * dx) / length, z: (pull * dz) / length - half_N };
}

/** The bait's lowest point when it just touches at `x_m`. */
export function restOnBottom(bottom: Bottom, x_m: number): Point {
  const contacts: Contact[] = [];
  let z = bottom.heightAt(x_m);
  for (let round = 0; round < 20; round++) {
    bottom.contactsNear(x_m, z, contacts);
    const lift = Math.max(...contacts.map((c) => (c.nz > 0.1 ? -c.gap_m / c.nz : 0)), -1);
    if (Math.abs(lift) < 1e-7 || contacts.length === 0) break;
    z += lift;
  }
  return { x: x_m, z };
}
