import type { Space } from '../eye';
import type { Ink } from '../palette';
import type { Spot } from '../grip';

/** A free line has marks so far apart, m: they run out with it, and stand when it stops. */
const MARK_EVERY_M = 0.3;
const MARK_PX = 3;

export function drawLineMarks(
  context: CanvasRenderingContext2D,
  places: readonly Spot[],
  ink: Ink
): void {
  context.fillStyle = ink.ink;
  context.strokeStyle = ink.raised;
  context.lineWidth = 1;
  for (const { x, y } of places) {
    context.beginPath();
    context.arc(x, y, MARK_PX, 0, 2 * Math.PI);
    context.fill();
    context.stroke();
  }
}

/** Where the marks of a line are that has run out so far. */
export function marksOn(points: readonly Space[], given_m: number): Space[] {
  const marks: Space[] = [];
  let next_m = given_m % MARK_EVERY_M;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    const long_m = Math.hypot(b.out_m - a.out_m, b.right_m - a.right_m, b.up_m - a.up_m);
    for (; next_m <= long_m; next_m += MARK_EVERY_M) {
      const mix = (from: number, to: number) => from + (next_m / long_m) * (to - from);
      marks.push({
        out_m: mix(a.out_m, b.out_m),
        right_m: mix(a.right_m, b.right_m),
        up_m: mix(a.up_m, b.up_m)
      });
    }
    next_m -= long_m;
  }
  return marks;
}
