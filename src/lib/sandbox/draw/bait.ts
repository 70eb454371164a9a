import type { Ink } from '../palette';
import type { Between } from '../scenery/scenery';
import { STRANDS } from '../scenery/strands';
import { drawSkirt, skirtScale } from './skirt';

/** However small the scale, the mark can be seen: least radius, px. */
const LEAST_RADIUS = 5;

/** The bait's mark alone: solid on the bottom, open above it. */
export function markBait(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  radius: number,
  isTouching: boolean,
  ink: Ink
): void {
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fillStyle = isTouching ? ink.bait : ink.raised;
  context.fill();
  context.strokeStyle = ink.bait;
  context.lineWidth = 2;
  context.stroke();
}

/** The jig with its lowest point at (x, y), line to the right, skirt as the water holds it. */
export function drawBait(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  scale: number,
  bait: { radius_m: number; isTouching: boolean; strands: Between },
  ink: Ink
): void {
  const radius = Math.max(bait.radius_m * scale, LEAST_RADIUS);
  const middle = y - radius;
  drawSkirt(context, x, y, scale, bait.strands, ink);
  drawHook(context, x, middle, radius, STRANDS[0].length_m * skirtScale(scale), ink);
  markBait(context, x, middle, radius, bait.isTouching, ink);
}

function drawHook(
  context: CanvasRenderingContext2D,
  x: number,
  middle: number,
  radius: number,
  skirt: number,
  ink: Ink
): void {
  const bend = skirt * 0.13;
  const heel = x - skirt * 0.58;
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  context.beginPath();
  context.moveTo(x - radius, middle - radius * 0.2);
  context.lineTo(heel, middle - radius * 0.3);
  context.arc(heel, middle - radius * 0.3 - bend, bend, Math.PI / 2, Math.PI * 1.5);
  context.lineTo(heel + bend * 0.9, middle - radius * 0.3 - 2 * bend);
  context.stroke();
}
