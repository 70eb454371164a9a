import type { Ink } from '../palette';
import { metresZ, pixelY, type View } from '../view';
import { ruleWater } from './texture';

/** How water is ruled: px between its lines at the top and at the bottom, and how faint they are. */
export interface Ruling {
  readonly widest: number;
  readonly closest: number;
  readonly alpha: number;
}

/** Water loses this share of its light in so many metres: 1 − 1/e; a clear lake's. A choice. */
const DARKENS_M = 6;
/** Height of a band of equal light, px. */
const BAND = 3;

/** Water between two heights of the picture, px: the deeper, the darker and the denser ruled. */
export function paintWater(
  context: CanvasRenderingContext2D,
  view: View,
  from: number,
  to: number,
  ruling: Ruling,
  ink: Ink
): void {
  context.fillStyle = ink.water;
  context.fillRect(0, from, view.width, view.height - from);
  context.fillStyle = ink.deep;
  for (let y = from; y < view.height; y += BAND) {
    context.globalAlpha = 1 - Math.exp(Math.min(metresZ(view, y), 0) / DARKENS_M);
    context.fillRect(0, y, view.width, BAND);
  }
  context.globalAlpha = 1;
  ruleWater(context, from, to, view.width, { ...ruling, colour: ink.rule });
}

/** The surface, one stroke across the picture. */
export function drawSurface(context: CanvasRenderingContext2D, view: View, ink: Ink): void {
  const y = pixelY(view, 0);
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  context.beginPath();
  context.moveTo(0, y);
  context.lineTo(view.width, y);
  context.stroke();
}
