import type { Pose } from '../pose';
import { pixelX, pixelY, type View } from '../view';

/** Adds the line from tip to bait to the path: the model's own nodes, joined by straight pieces. */
export function traceLine(
  context: CanvasRenderingContext2D,
  view: View,
  pose: Pose,
  isHidden: boolean
): void {
  const { x, z } = pose;
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
