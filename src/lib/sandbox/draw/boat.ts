import type { Ink } from '../palette';
import { pixelX, pixelY, type View } from '../view';

/** Height of the deck above the water, and of the angler's grip above the deck, m. */
const DECK_M = 0.34;
const HULL_LENGTH_M = 3.4;
/** How far the bow reaches in front of the hand. */
const BOW_M = 0.75;

type Points = readonly (readonly [along_m: number, up_m: number])[];

/** The angler's outline, seen from the side, metres from the gripping hand towards the bait and up. */
const BODY: Points = [
  [-0.16, 0.5],
  [-0.12, 0.38],
  [-0.14, 0.28],
  [-0.17, -0.02],
  [-0.15, -0.5],
  [-0.14, -0.84],
  [-0.04, -0.9],
  [-0.26, -0.9],
  [-0.3, -0.5],
  [-0.33, -0.84],
  [-0.26, -0.9],
  [-0.45, -0.9],
  [-0.44, -0.5],
  [-0.45, -0.08],
  [-0.43, 0.2],
  [-0.39, 0.38],
  [-0.31, 0.44],
  [-0.3, 0.5]
];

/** Hull and angler in quiet tones: they give the scale and are not what one looks at. */
export function drawBoat(
  context: CanvasRenderingContext2D,
  view: View,
  hand_m: number,
  ink: Ink
): void {
  drawHull(context, view, hand_m, ink);
  drawAngler(context, view, hand_m, ink);
}

function drawHull(context: CanvasRenderingContext2D, view: View, hand_m: number, ink: Ink): void {
  const deck = Math.min(DECK_M, hand_m * 0.5);
  const x = (m: number) => pixelX(view, m);
  const y = (m: number) => pixelY(view, m);
  context.beginPath();
  context.moveTo(x(BOW_M), y(deck + 0.06));
  context.quadraticCurveTo(x(BOW_M - 0.25), y(-0.1), x(BOW_M - 0.7), y(-0.16));
  context.lineTo(x(BOW_M - HULL_LENGTH_M), y(-0.14));
  context.lineTo(x(BOW_M - HULL_LENGTH_M - 0.05), y(deck));
  context.lineTo(x(BOW_M - 0.5), y(deck));
  context.closePath();
  context.fillStyle = ink.paper;
  context.fill();
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  context.stroke();
  context.beginPath();
  context.moveTo(x(BOW_M - 0.12), y(deck * 0.62));
  context.lineTo(x(BOW_M - HULL_LENGTH_M - 0.02), y(deck * 0.55));
  context.lineWidth = 0.75;
  context.stroke();
}

function drawAngler(context: CanvasRenderingContext2D, view: View, hand_m: number, ink: Ink): void {
  const deck = Math.min(DECK_M, hand_m * 0.5);
  // A grip low over the water is a crouching angler: the legs give way, the upper body stays.
  const legs = (hand_m - deck) / 0.9;
  const x = (m: number) => pixelX(view, m);
  const y = (m: number) => pixelY(view, hand_m + (m < 0 ? m * legs : m));
  context.fillStyle = ink.lead;
  context.beginPath();
  BODY.forEach(([along, up], i) => {
    if (i === 0) context.moveTo(x(along), y(up));
    else context.lineTo(x(along), y(up));
  });
  context.closePath();
  context.fill();
  context.beginPath();
  context.ellipse(x(-0.22), y(0.6), 0.095 * view.scale, 0.125 * view.scale, 0, 0, 2 * Math.PI);
  context.fill();
  context.beginPath();
  context.moveTo(x(-0.05), y(0.645));
  context.lineTo(x(-0.33), y(0.66));
  context.moveTo(x(-0.3), y(0.3));
  context.lineTo(x(-0.33), y(0.04));
  context.lineTo(x(0), y(0));
  context.strokeStyle = ink.lead;
  context.lineWidth = Math.max(0.055 * view.scale, 1);
  context.stroke();
}
