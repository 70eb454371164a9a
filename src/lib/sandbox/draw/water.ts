import type { Ink } from '../palette';
import { pixelY, type View } from '../view';
import { ruleWater } from './texture';

/** How water is ruled: px between its lines at the top and at the bottom, and how faint they are. */
export interface Ruling {
  readonly widest: number;
  readonly closest: number;
  readonly alpha: number;
}

/** Water between two heights of the picture, px: the deeper, the denser. */
export function paintWater(
  context: CanvasRenderingContext2D,
  view: View,
  from: number,
  to: number,
  ruling: Ruling,
  ink: Ink
): void {
  const tint = context.createLinearGradient(0, from, 0, to);
  tint.addColorStop(0, ink.water);
  tint.addColorStop(1, ink.deep);
  context.fillStyle = tint;
  context.fillRect(0, from, view.width, view.height - from);
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
