import type { Ink } from '../palette';
import type { Pose } from '../pose';
import { pixelX, pixelY, type View } from '../view';

/** The line from tip to bait, or to the surface when hidden: the model's nodes, joined straight. */
export function drawLine(
  context: CanvasRenderingContext2D,
  view: View,
  pose: Pose,
  isHidden: boolean,
  ink: Ink
): void {
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.1;
  context.beginPath();
  traceLine(context, view, pose, isHidden);
  context.stroke();
}

/**
 * How far a line lies aside in its middle, m: it is longer than the way it spans, and lies on the water
 * in an arc (of a flat arc, 3/8 of the way by what is too long, the root of it).
 */
export function lineArcOf({ x, z }: Pick<Pose, 'x' | 'z'>): number {
  const last = x.length - 1;
  let line_m = 0;
  for (let i = 1; i <= last; i++) line_m += Math.hypot(x[i] - x[i - 1], z[i] - z[i - 1]);
  const way_m = Math.hypot(x[last] - x[0], z[last] - z[0]);
  return Math.sqrt(0.375 * way_m * Math.max(0, line_m - way_m));
}

function traceLine(
  context: CanvasRenderingContext2D,
  view: View,
  { x, z }: Pose,
  isHidden: boolean
): void {
  context.moveTo(pixelX(view, x[0]), pixelY(view, z[0]));
  for (let i = 1; i < x.length; i++) {
    if (isHidden && z[i] < 0) {
      const share = z[i - 1] / (z[i - 1] - z[i]);
      const surfaceX = x[i - 1] + share * (x[i] - x[i - 1]);
      context.lineTo(pixelX(view, surfaceX), pixelY(view, 0));
      return;
    }
    context.lineTo(pixelX(view, x[i]), pixelY(view, z[i]));
  }
}
