import type { Trace } from '$lib/model';
import type { Ink } from '../palette';
import { shownLifts } from '../shown-lifts';
import type { Backdrop } from '../stage';
import { pixelX, pixelY, type View } from '../view';
import { dotFlight } from './track';

/** A try before: an open mark where the bait came to rest, and the dots of its flights, faint. */
export function drawGhost(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  trace: Trace,
  age: number,
  ink: Ink
): void {
  const last = trace.bait_x_m.length - 1;
  const x = pixelX(view, trace.bait_x_m[last]);
  const y = pixelY(view, trace.bait_z_m[last]);
  const radius = Math.max(stage.baitRadius_m * view.scale, 5);
  context.globalAlpha = Math.max(0.9 - 0.17 * age, 0.25);
  context.strokeStyle = ink.lead;
  context.fillStyle = ink.lead;
  context.lineWidth = 1.25;
  context.beginPath();
  context.arc(x, y - radius, radius, 0, 2 * Math.PI);
  context.stroke();
  const { contact } = shownLifts(trace, stage.heightAt);
  dotFlight(context, view, trace.bait_x_m, trace.bait_z_m, contact, trace.t_s.length);
  context.globalAlpha = 1;
}
