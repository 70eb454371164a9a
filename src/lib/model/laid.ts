import type { Line } from './line';
import type { Point } from './tip-path';

/** A line laid out from tip to bait, before it moves. */
export interface Laid {
  readonly x_m: Float64Array;
  readonly z_m: Float64Array;
  readonly pieceLength_m: number;
}

export function straightBetween(line: Line, tip: Point, bait: Point, unstretched_m: number): Laid {
  const n = line.segments;
  const share = Float64Array.from({ length: n + 1 }, (_, i) => i / n);
  return {
    x_m: share.map((s) => tip.x + s * (bait.x - tip.x)),
    z_m: share.map((s) => tip.z + s * (bait.z - tip.z)),
    pieceLength_m: unstretched_m / n
  };
}

export function chordOf(tip: Point, bait: Point): number {
  return Math.hypot(bait.x - tip.x, bait.z - tip.z);
}
