import { BITE_S, type RunEvent } from '$lib/model';
import type { Ink } from '../palette';
import type { Backdrop, Moment } from '../stage';
import { pixelX, pixelY, type View } from '../view';

/** A bass of two pounds is so long, m (common practice, no source). */
const LENGTH_M = 0.35;
/** It never takes more of the picture's height than this, nor less than it takes to be a fish, px. */
const MOST_PART = 0.5;
const LEAST_PX = 46;
/** It tips up to take a jig off the bottom: so steep, radians. */
const TIPPED = 0.75;

export interface Fish {
  x_m: number;
  z_m: number;
  /** 0–1: whether it has the bait, or is what is left to be seen of where it had it. */
  isBiting: boolean;
}

/** Where a fish has the bait, or had it, at a moment; null before it bit and where none did. */
export function fishAt({ events, trace, pose }: Pick<Moment, 'events' | 'trace' | 'pose'>) {
  const bite = events.findLast(
    (event): event is Extract<RunEvent, { kind: 'bite' }> =>
      event.kind === 'bite' && event.t_s <= pose.t_s
  );
  if (!bite) return null;
  const ends_s = bite.t_s + BITE_S[bite.bite];
  const isBiting = pose.t_s <= ends_s;
  const last = pose.x.length - 1;
  if (isBiting) return { x_m: pose.x[last], z_m: pose.z[last], isBiting } satisfies Fish;
  const at = trace.t_s.findLastIndex((t_s) => t_s <= ends_s);
  return { x_m: trace.bait_x_m[at], z_m: trace.bait_z_m[at], isBiting } satisfies Fish;
}

/** The fish that bit, once the try is over: before that it would tell what is to be felt. */
export function drawFish(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  ink: Ink
): void {
  const fish = moment.isRevealed ? fishAt(moment) : null;
  if (!fish) return;
  const long = Math.max(LEAST_PX, Math.min(LENGTH_M * view.scale, MOST_PART * view.height));
  context.save();
  context.translate(pixelX(view, fish.x_m), pixelY(view, fish.z_m) - 4);
  // Its body is on the side that is away from the angler, its tail up.
  context.scale(Math.sign(stage.bait.x_m), 1);
  context.rotate(TIPPED);
  outline(context, long);
  context.fillStyle = ink.deep;
  context.globalAlpha = fish.isBiting ? 0.9 : 0.5;
  context.fill();
  context.globalAlpha = 1;
  context.strokeStyle = ink.lead;
  context.lineWidth = fish.isBiting ? 1.75 : 1.25;
  context.setLineDash(fish.isBiting ? [] : [5, 4]);
  context.stroke();
  context.setLineDash([]);
  drawHead(context, long, ink);
  context.restore();
}

/** Nose at zero, tail along minus x: one stroke, that tapers to the wrist of the tail. */
function outline(context: CanvasRenderingContext2D, long: number): void {
  const at = (x: number, y: number): [number, number] => [-x * long, y * long];
  context.beginPath();
  context.moveTo(0, 0);
  context.bezierCurveTo(...at(0.14, -0.12), ...at(0.36, -0.19), ...at(0.55, -0.13));
  context.bezierCurveTo(...at(0.68, -0.09), ...at(0.78, -0.04), ...at(0.84, -0.035));
  context.quadraticCurveTo(...at(0.93, -0.08), ...at(1, -0.13));
  context.quadraticCurveTo(...at(0.955, 0), ...at(1, 0.12));
  context.quadraticCurveTo(...at(0.93, 0.06), ...at(0.84, 0.03));
  context.bezierCurveTo(...at(0.74, 0.05), ...at(0.62, 0.13), ...at(0.44, 0.14));
  context.bezierCurveTo(...at(0.28, 0.15), ...at(0.1, 0.1), ...at(0, 0));
  context.closePath();
}

/** Gill, eye, and the long back fin, in the thinnest strokes. */
function drawHead(context: CanvasRenderingContext2D, long: number, ink: Ink): void {
  context.lineWidth = 1;
  context.beginPath();
  context.arc(-0.19 * long, 0, 0.1 * long, 0.62 * Math.PI, 1.38 * Math.PI);
  context.moveTo(-0.3 * long, -0.165 * long);
  context.quadraticCurveTo(-0.42 * long, -0.27 * long, -0.56 * long, -0.13 * long);
  context.stroke();
  context.beginPath();
  context.arc(-0.11 * long, -0.045 * long, Math.max(1.25, 0.014 * long), 0, 2 * Math.PI);
  context.fillStyle = ink.lead;
  context.fill();
}
