import { eyeOf, gazeOf, onRod, seen, type Eye } from '../eye';
import type { Ink } from '../palette';
import type { Moment, Backdrop } from '../stage';
import type { View } from '../view';
import { grain } from './texture';

/**
 * The angler's view: the rod in perspective over the water, with neither ruler nor dial. Judging the
 * tip's way from here is what there is to learn.
 */

/** The rod's thickness at the hand and at the tip, m. */
const BUTT_M = 0.022;
const TIP_M = 0.004;
const PIECES = 16;
/** Ripples on the water: rows of them, and the nearest and the farthest row, m. */
const ROWS = 26;
const NEAREST_M = 2.2;
const FARTHEST_M = 90;
/** The bow before the hand, m: half its width, its point and its height over the water. */
const BOW = { half: 0.62, point: 1.5, up: 0.38 } as const;

export function deckView(_stage: Backdrop, width: number, height: number): View {
  return { width, height, scale: 1, x0: width / 2, y0: height };
}

function eyeIn({ setup, plane, start }: Backdrop, { width, height }: View): Eye {
  return eyeOf(setup, width, height, gazeOf(plane, start));
}

/** The water so far out along the gaze: as far across the whole picture. */
function onWater(eye: Eye, far_m: number): ReturnType<typeof seen> {
  const [out_m, right_m] = [far_m * Math.cos(eye.aside), far_m * Math.sin(eye.aside)];
  return seen(eye, { out_m, right_m, up_m: 0 });
}

export function paintDeckBack(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const eye = eyeIn(stage, view);
  const horizon = onWater(eye, 4000).y;
  context.fillStyle = ink.raised;
  context.fillRect(0, 0, view.width, horizon);
  const tint = context.createLinearGradient(0, horizon, 0, view.height);
  tint.addColorStop(0, ink.water);
  tint.addColorStop(1, ink.deep);
  context.fillStyle = tint;
  context.fillRect(0, horizon, view.width, view.height - horizon);
  drawShore(context, horizon, view.width, ink);
  ripple(context, eye, ink);
  drawBow(context, eye, ink);
}

/** A low wooded shore on the horizon. */
function drawShore(context: CanvasRenderingContext2D, y: number, width: number, ink: Ink): void {
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(0, y);
  context.lineTo(width, y);
  for (let x = 0; x < width; x += 4) {
    const rise = 3 + 4 * grain(Math.floor(x / 24), 5) + 3 * grain(x, 9);
    context.moveTo(x, y);
    context.lineTo(x + 1, y - rise);
  }
  context.stroke();
}

/** Broken strokes on the water that come closer together towards the horizon. */
function ripple(context: CanvasRenderingContext2D, eye: Eye, ink: Ink): void {
  context.strokeStyle = ink.rule;
  context.lineWidth = 1;
  context.beginPath();
  for (let row = 0; row < ROWS; row++) {
    const out_m = NEAREST_M * (FARTHEST_M / NEAREST_M) ** (row / (ROWS - 1));
    const { y, far_m } = onWater(eye, out_m);
    const dash = Math.min((2.2 * eye.focus) / far_m, 220);
    for (let x = -dash * grain(row, 1), i = 0; x < eye.width; i++) {
      const length = dash * (0.3 + 0.7 * grain(row, i + 2));
      context.moveTo(x, y);
      context.lineTo(x + length, y);
      x += length + dash * (0.4 + grain(row, -i - 1));
    }
  }
  context.stroke();
}

function drawBow(context: CanvasRenderingContext2D, eye: Eye, ink: Ink): void {
  const rail = (out_m: number, right_m: number) => seen(eye, { out_m, right_m, up_m: BOW.up });
  const point = rail(BOW.point, 0);
  const left = rail(0.25, -BOW.half);
  const right = rail(0.25, BOW.half);
  context.beginPath();
  context.moveTo(left.x - 20, eye.height + 2);
  context.quadraticCurveTo(left.x, left.y, point.x, point.y);
  context.quadraticCurveTo(right.x, right.y, right.x + 20, eye.height + 2);
  context.closePath();
  context.fillStyle = ink.paper;
  context.fill();
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  context.stroke();
}

export function paintDeck(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  ink: Ink
): void {
  const eye = eyeIn(stage, view);
  drawLineOut(context, eye, stage, moment, ink);
  drawRodAway(context, eye, stage, moment, ink);
}

/** The dry part of the line: from the tip to where it goes into the water. */
function drawLineOut(
  context: CanvasRenderingContext2D,
  eye: Eye,
  stage: Backdrop,
  { pose }: Moment,
  ink: Ink
): void {
  const tip = onRod(stage.setup, pose, 1);
  const { x, z } = pose;
  const side = Math.sign(stage.bait.x_m);
  const wet = Math.max(
    z.findIndex((height) => height < 0),
    1
  );
  const share = z[wet - 1] > 0 ? z[wet - 1] / (z[wet - 1] - z[wet]) : 1;
  const meets_m = side * (x[wet - 1] + share * (x[wet] - x[wet - 1]));
  context.strokeStyle = ink.ink;
  context.lineWidth = 1;
  context.beginPath();
  for (let i = 0; i <= wet; i++) {
    const out_m = i === wet ? meets_m : side * x[i];
    // The model's line lies in one plane; the tip's way aside fades out along it.
    const along = (out_m - side * x[0]) / Math.max(meets_m - side * x[0], 1e-6);
    const at = seen(eye, {
      out_m: i === 0 ? tip.out_m : out_m,
      right_m: tip.right_m * (1 - Math.min(Math.max(along, 0), 1)),
      up_m: i === wet ? 0 : z[i]
    });
    if (i === 0) context.moveTo(at.x, at.y);
    else context.lineTo(at.x, at.y);
  }
  context.stroke();
}

/** One tapered blank from the hand to the tip, as wide as it is seen from the eye. */
function drawRodAway(
  context: CanvasRenderingContext2D,
  eye: Eye,
  stage: Backdrop,
  { pose }: Moment,
  ink: Ink
): void {
  const spine = Array.from({ length: PIECES + 1 }, (_, i) => {
    const at = seen(eye, onRod(stage.setup, pose, i / PIECES));
    const thick_m = BUTT_M + ((TIP_M - BUTT_M) * i) / PIECES;
    return { ...at, half: Math.max((thick_m * eye.focus) / at.far_m, 1.2) / 2 };
  });
  const side = (sign: 1 | -1) =>
    spine.map(({ x, y, half }, i) => {
      const [before, after] = [spine[Math.max(i - 1, 0)], spine[Math.min(i + 1, PIECES)]];
      const length = Math.hypot(after.x - before.x, after.y - before.y) || 1;
      const across = (sign * half) / length;
      return { x: x - (after.y - before.y) * across, y: y + (after.x - before.x) * across };
    });
  context.fillStyle = ink.ink;
  context.beginPath();
  for (const { x, y } of [...side(1), ...side(-1).reverse()]) context.lineTo(x, y);
  context.closePath();
  context.fill();
}
