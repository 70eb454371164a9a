import type { Ink } from '../palette';
import type { View } from '../view';

/** Half the boat's width, and where its bow is in front of the hand, m. */
const BEAM_M = 0.82;
const BOW_M = 0.66;
/** The gunwale's width, m. */
const RAIL_M = 0.07;

/** Boat and angler from above, the bow towards the bait. */
export function drawDeck(context: CanvasRenderingContext2D, view: View, ink: Ink): void {
  context.strokeStyle = ink.ink;
  context.fillStyle = ink.paper;
  hull(context, view, 0);
  context.lineWidth = 1.25;
  context.fill();
  context.stroke();
  hull(context, view, RAIL_M);
  context.lineWidth = 0.75;
  context.stroke();
  drawAngler(context, view, ink);
}

function hull(context: CanvasRenderingContext2D, view: View, inset_m: number): void {
  const { x0, y0, scale, width } = view;
  const bow = x0 - (BOW_M - 1.6 * inset_m) * scale;
  const side = (BEAM_M - inset_m) * scale;
  const end = width + 10;
  context.beginPath();
  context.moveTo(end, y0 - side);
  context.bezierCurveTo(x0, y0 - side, bow + 0.18 * scale, y0 - side * 0.62, bow, y0);
  context.bezierCurveTo(bow + 0.18 * scale, y0 + side * 0.62, x0, y0 + side, end, y0 + side);
}

function drawAngler(context: CanvasRenderingContext2D, view: View, ink: Ink): void {
  const x = (back_m: number) => view.x0 + back_m * view.scale;
  const y = (side_m: number) => view.y0 + side_m * view.scale;
  context.strokeStyle = ink.lead;
  context.lineWidth = 0.1 * view.scale;
  context.beginPath();
  for (const side of [-1, 1]) {
    context.moveTo(x(0.36), y(side * 0.21));
    context.quadraticCurveTo(x(0.16), y(side * 0.24), x(0.02), y(side * 0.02));
  }
  context.stroke();
  context.fillStyle = ink.lead;
  context.beginPath();
  context.ellipse(x(0.38), view.y0, 0.13 * view.scale, 0.26 * view.scale, 0, 0, 2 * Math.PI);
  context.fill();
  context.lineWidth = 1;
  context.strokeStyle = ink.paper;
  context.beginPath();
  context.ellipse(x(0.35), view.y0, 0.11 * view.scale, 0.095 * view.scale, 0, 0, 2 * Math.PI);
  context.fill();
  context.stroke();
  context.beginPath();
  context.ellipse(
    x(0.24),
    view.y0,
    0.08 * view.scale,
    0.085 * view.scale,
    0,
    Math.PI / 2,
    -Math.PI / 2
  );
  context.fill();
  context.stroke();
}
