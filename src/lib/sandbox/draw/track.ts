import type { Ink } from '../palette';
import { shownLifts } from '../shown-lifts';
import type { Backdrop, Moment } from '../stage';
import { pixelX, pixelY, type View } from '../view';

/** The bait's way so far: a scratch in the bottom where it dragged, dots where it flew. */

/** Dots along a flight are this far apart, px. */
const DOT_GAP = 6;

export function drawTrack(
  context: CanvasRenderingContext2D,
  view: View,
  { heightAt }: Pick<Backdrop, 'heightAt'>,
  { trace, ticks }: Pick<Moment, 'trace' | 'ticks'>,
  ink: Ink
): void {
  const { bait_x_m, bait_z_m } = trace;
  const { contact } = shownLifts(trace, heightAt);
  context.strokeStyle = ink.ink;
  context.lineWidth = 3;
  context.beginPath();
  for (let i = 1; i < ticks; i++) {
    if (contact[i] === 0 || contact[i - 1] === 0) continue;
    context.moveTo(pixelX(view, bait_x_m[i - 1]), pixelY(view, bait_z_m[i - 1]) + 2.5);
    context.lineTo(pixelX(view, bait_x_m[i]), pixelY(view, bait_z_m[i]) + 2.5);
  }
  context.stroke();
  context.fillStyle = ink.inkSoft;
  dotFlight(context, view, bait_x_m, bait_z_m, contact, ticks);
}

/** Dots along the ticks in which the bait is clear of the bottom, evenly spaced on the paper. */
export function dotFlight(
  context: CanvasRenderingContext2D,
  view: View,
  x_m: readonly number[],
  z_m: readonly number[],
  contact: readonly (0 | 1)[],
  ticks: number
): void {
  let lastX = -Infinity;
  let lastY = -Infinity;
  context.beginPath();
  for (let i = 0; i < ticks; i++) {
    if (contact[i] === 1) continue;
    const x = pixelX(view, x_m[i]);
    const y = pixelY(view, z_m[i]) - 2;
    if (Math.abs(x - lastX) + Math.abs(y - lastY) < DOT_GAP) continue;
    context.moveTo(x + 1.1, y);
    context.arc(x, y, 1.1, 0, 2 * Math.PI);
    lastX = x;
    lastY = y;
  }
  context.fill();
}
