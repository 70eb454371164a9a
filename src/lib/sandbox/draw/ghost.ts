import type { Trace } from '$lib/model';
import type { Ink } from '../palette';
import { shownLifts } from '../shown-lifts';
import type { Backdrop } from '../stage';
import { pixelX, pixelY, type View } from '../view';
import { dotFlight } from './track';
import { setFigures } from './type';

/** The word over the newest mark says what all of them are; over a bait that lies there it is left out, px. */
const WORD_CLEAR_PX = 48;

/** A try before: an open mark where the bait came to rest, and the dots of its flights, faint. */
export function drawGhost(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  trace: Trace,
  age: number,
  ink: Ink
): void {
  const { x, y, radius } = markOf(view, stage, trace);
  context.globalAlpha = Math.max(0.9 - 0.17 * age, 0.25);
  context.strokeStyle = ink.lead;
  context.fillStyle = ink.lead;
  context.lineWidth = 1.25;
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.stroke();
  const { contact } = shownLifts(trace, stage.heightAt);
  dotFlight(context, view, trace.bait_x_m, trace.bait_z_m, contact, trace.t_s.length);
  context.globalAlpha = 1;
}

/** Names the mark of the last try where the bait, at `bait_x_m`, leaves room for the word. */
export function nameGhost(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  trace: Trace,
  bait_x_m: number,
  ink: Ink
): void {
  const { x, y, radius } = markOf(view, stage, trace);
  if (Math.abs(x - pixelX(view, bait_x_m)) < WORD_CLEAR_PX) return;
  setFigures(context, ink, { px: 12, weight: 500, align: 'center' });
  context.fillText('last try', Math.min(Math.max(x, 26), view.width - 26), y - radius - 9);
}

/** On the bottom, where the bait came to rest, px. */
function markOf(view: View, stage: Backdrop, { bait_x_m, bait_z_m }: Trace) {
  const last = bait_x_m.length - 1;
  const radius = Math.max(stage.baitRadius_m * view.scale, 5);
  const x = pixelX(view, bait_x_m[last]);
  return { x, y: pixelY(view, bait_z_m[last]) - radius, radius };
}
