import type { Ink } from '../palette';
import type { RulerTick } from '../ruler';
import { pixelX, pixelY, type View } from '../view';
import { setFigures } from './type';

/**
 * The sounding line: let down to the bottom, with marks at known depths, leather (solid) and cloth
 * (open) in turn, and the lead at its foot.
 */
export function drawSounding(
  context: CanvasRenderingContext2D,
  view: View,
  x_m: number,
  floor_m: number,
  marks: readonly RulerTick[],
  depthLabel: string,
  ink: Ink
): void {
  const x = Math.round(pixelX(view, x_m)) + 0.5;
  const surface = pixelY(view, 0);
  const floor = pixelY(view, floor_m);
  context.strokeStyle = ink.ink;
  context.fillStyle = ink.ink;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(x, surface);
  context.lineTo(x, floor - 12);
  context.stroke();
  drawLead(context, x, floor, ink);
  for (const mark of marks) {
    const y = pixelY(view, -mark.at_m);
    if (floor - y < 26) continue;
    tag(context, x, y, mark.isSolid, ink);
    setFigures(context, ink, { px: 12, weight: 500, align: 'left' });
    context.fillText(mark.label, x + 13, y + 1);
  }
  setFigures(context, ink, { px: 13, weight: 600, align: 'left' });
  context.fillText(depthLabel, x + 10, floor - 7);
}

function tag(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  isSolid: boolean,
  ink: Ink
): void {
  context.beginPath();
  context.moveTo(x, y - 3);
  context.lineTo(x + 9, y - 3);
  context.lineTo(x + 6.5, y);
  context.lineTo(x + 9, y + 3);
  context.lineTo(x, y + 3);
  context.closePath();
  context.fillStyle = isSolid ? ink.ink : ink.raised;
  context.fill();
  context.stroke();
}

function drawLead(context: CanvasRenderingContext2D, x: number, floor: number, ink: Ink): void {
  context.beginPath();
  context.moveTo(x - 1.5, floor - 13);
  context.lineTo(x + 1.5, floor - 13);
  context.lineTo(x + 4, floor - 1.5);
  context.quadraticCurveTo(x, floor + 1, x - 4, floor - 1.5);
  context.closePath();
  context.fillStyle = ink.lead;
  context.fill();
  context.stroke();
}
