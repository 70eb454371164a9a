import type { Ink } from '../palette';

/** Length of skirt and trailer behind the head, m. */
const SKIRT_M = 0.055;
/** However small the scale, the mark can be seen: least radius and skirt, px. */
const LEAST_RADIUS = 5;
const LEAST_SKIRT = 20;

/** Strands of the skirt: how far each is fanned out, −1 low to 1 high. */
const STRANDS = [-1, -0.62, -0.25, 0.15, 0.55, 1] as const;

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

/** The jig with its lowest point at (x, y), line to the right, skirt trailing to the left. */
export function drawBait(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  scale: number,
  bait: { radius_m: number; isTouching: boolean },
  ink: Ink
): void {
  const radius = Math.max(bait.radius_m * scale, LEAST_RADIUS);
  const skirt = Math.max(SKIRT_M * scale, LEAST_SKIRT);
  const middle = y - radius;
  context.strokeStyle = ink.bait;
  context.lineWidth = 1.25;
  context.beginPath();
  for (const fan of STRANDS) {
    context.moveTo(x - radius * 0.6, middle + fan * radius * 0.5);
    context.quadraticCurveTo(
      x - skirt * 0.5,
      middle - fan * skirt * 0.2 - skirt * 0.08,
      x - skirt * (0.94 - 0.14 * fan * fan),
      Math.min(middle - fan * skirt * 0.27, y - 1)
    );
  }
  context.stroke();
  drawHook(context, x, middle, radius, skirt, ink);
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
