import type { Bait } from './bait';
import type { Point } from './tip-path';

/**
 * What lifts a bait that is towed through the water: skirt, trailer and a flat head set at an angle to
 * the way they go. Across the velocity v, upward, and of the size
 *
 *   |L| = λ · ½ρ CdA · |v| · |vx|,
 *
 * λ (lift_to_drag) times the drag on a level way, falling off with the cosine of the way's slope: a bait
 * that falls straight down is not drawn to either side. In components L = λ ½ρ CdA (−vx vz, vx²), which
 * is smooth and does no work. The form is ours; λ is unknown, 0 to 0.4 for a dressed jig (docs/planing.md).
 */
export function planingForce(bait: Bait, vx: number, vz: number, out: Point): void {
  const perSpeed = bait.liftToDrag * bait.drag * vx;
  out.x = -perSpeed * vz;
  out.z = perSpeed * vx;
}
