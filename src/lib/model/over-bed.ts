import type { Bottom } from './bottom';
import type { Line } from './line';
import { chordOf, type Laid } from './laid';
import type { Point } from './tip-path';

/** Places at which the bottom is looked at for what stands in the line's way. */
const HULL_SAMPLES = 400;

/** Shortest way of a line from tip to bait over whatever stands between: the chord where it is clear. */
function tautOver(bottom: Bottom, tip: Point, bait: Point): Point[] {
  const hull: Point[] = [];
  for (let i = 0; i <= HULL_SAMPLES; i++) {
    const share = i / HULL_SAMPLES;
    const x = tip.x + share * (bait.x - tip.x);
    const point = i === 0 ? tip : i === HULL_SAMPLES ? bait : { x, z: bottom.bedAt(x, bait) };
    while (hull.length > 1 && isBelow(hull[hull.length - 2], hull[hull.length - 1], point))
      hull.pop();
    hull.push(point);
  }
  return hull;
}

/** Whether `middle` lies on or under the straight line from `a` to `b`. */
function isBelow(a: Point, middle: Point, b: Point): boolean {
  return middle.z <= a.z + ((b.z - a.z) * (middle.x - a.x)) / (b.x - a.x);
}

/** Length of that way, m. */
export function tautLength(bottom: Bottom, tip: Point, bait: Point): number {
  return lengthsOf(tautOver(bottom, tip, bait)).reduce((sum, length) => sum + length, 0);
}

function lengthsOf(hull: readonly Point[]): number[] {
  return hull.slice(1).map((point, i) => chordOf(hull[i], point));
}

/** A line drawn tight over the bottom, its nodes evenly spaced. */
export function overBed(
  line: Line,
  bottom: Bottom,
  tip: Point,
  bait: Point
): Pick<Laid, 'x_m' | 'z_m'> {
  const hull = tautOver(bottom, tip, bait);
  const lengths = lengthsOf(hull);
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const n = line.segments;
  const x_m = new Float64Array(n + 1);
  const z_m = new Float64Array(n + 1);
  let edge = 0;
  let passed = 0;
  for (let i = 0; i <= n; i++) {
    const way = (i / n) * total;
    while (edge < lengths.length - 1 && passed + lengths[edge] < way) passed += lengths[edge++];
    const share = Math.min((way - passed) / lengths[edge], 1);
    x_m[i] = hull[edge].x + share * (hull[edge + 1].x - hull[edge].x);
    z_m[i] = hull[edge].z + share * (hull[edge + 1].z - hull[edge].z);
  }
  return { x_m, z_m };
}
