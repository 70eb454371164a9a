import { WORDS_PX } from '../close-up';
import type { Ink } from '../palette';
import type { Moment } from '../stage';
import { pixelX, pixelY, type View } from '../view';

/** The mark of a pass over the bait: radius, and how far above it, px. */
const MARK = { radius: 12, above: 46, edge: 20 } as const;

/** A tick over the bait where it came to rest: what was asked was done. */
export function drawPassed(
  context: CanvasRenderingContext2D,
  view: View,
  { pose }: Moment,
  ink: Ink
): void {
  const last = pose.x.length - 1;
  const { radius, above, edge } = MARK;
  const x = Math.max(edge, Math.min(view.width - edge, pixelX(view, pose.x[last])));
  const y = Math.max(WORDS_PX + radius, pixelY(view, pose.z[last]) - above);
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fillStyle = ink.reed;
  context.fill();
  context.beginPath();
  context.moveTo(x - 0.5 * radius, y + 0.05 * radius);
  context.lineTo(x - 0.12 * radius, y + 0.42 * radius);
  context.lineTo(x + 0.52 * radius, y - 0.4 * radius);
  context.strokeStyle = ink.raised;
  context.lineWidth = 2.5;
  context.lineCap = 'round';
  context.stroke();
  context.lineCap = 'butt';
}
