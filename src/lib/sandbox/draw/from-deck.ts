import { eyeOf, gazeOf, seen, type Eye } from '../eye';
import type { Ink } from '../palette';
import type { Pose } from '../pose';
import type { Moment, Backdrop } from '../stage';
import type { View } from '../view';
import { paintRodAndLine } from './rod-from-deck';
import { grain } from './texture';

/**
 * The angler's view: the rod in perspective over the water, with neither ruler nor dial. Judging the
 * tip's way from here is what there is to learn.
 */

/** Ripples on the water: rows of them, and the nearest and the farthest row, m. */
const ROWS = 26;
const NEAREST_M = 2.2;
const FARTHEST_M = 90;
/** Rows of cloud in the sky. */
const CLOUDS = 9;
/** The shores: how high, how coarse, px; seed; how solid, 0–1. */
const SHORES = [
  { high: 22, step: 9, seed: 5, alpha: 0.25 },
  { high: 11, step: 4, seed: 17, alpha: 0.55 }
] as const;
/** The boat before the one who stands there, m: half its width, its bow, so far out that the rod is held over it, and its height over the water. */
const BOW = { half: 0.82, point: 1.2, up: 0.38 } as const;

export function deckView(_stage: Backdrop, width: number, height: number): View {
  return { width, height, scale: 1, x0: width / 2, y0: height };
}

function eyeIn({ setup, plane, start }: Backdrop, { width, height }: View, at?: Pose): Eye {
  return eyeOf(setup, width, height, gazeOf(plane, start, at?.azimuth_deg));
}

/** Which way is looked, for as long as it is the same behind the rod. */
export function deckGaze({ plane, start }: Backdrop, { azimuth_deg }: Pose): number {
  return gazeOf(plane, start, azimuth_deg).turned;
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
  ink: Ink,
  at?: Pose
): void {
  const eye = eyeIn(stage, view, at);
  const horizon = onWater(eye, 4000).y;
  drawSky(context, horizon, view.width, ink);
  const tint = context.createLinearGradient(0, horizon, 0, view.height);
  tint.addColorStop(0, ink.water);
  tint.addColorStop(1, ink.deep);
  context.fillStyle = tint;
  context.fillRect(0, horizon, view.width, view.height - horizon);
  drawShore(context, horizon, view.width, ink);
  ripple(context, eye, ink);
  drawBow(context, eye, ink);
}

/** Long thin clouds, as an engraver lays them: closer together towards the horizon. */
function drawSky(
  context: CanvasRenderingContext2D,
  horizon: number,
  width: number,
  ink: Ink
): void {
  const sky = context.createLinearGradient(0, 0, 0, horizon);
  sky.addColorStop(0, ink.raised);
  sky.addColorStop(1, ink.water);
  context.fillStyle = sky;
  context.fillRect(0, 0, width, horizon);
  context.strokeStyle = ink.rule;
  context.lineWidth = 1;
  context.beginPath();
  for (let row = 1; row <= CLOUDS; row++) {
    const y = horizon * (1 - 0.86 * (row / CLOUDS) ** 1.7) - 10;
    for (let piece = 0; piece < 3; piece++) {
      const x = width * (grain(row, piece + 3) * 1.2 - 0.1);
      const length = width * (0.06 + 0.2 * grain(row, piece + 8));
      context.moveTo(x, y);
      context.lineTo(x + length, y);
    }
  }
  context.stroke();
}

/** Two wooded shores on the horizon, the farther one higher and fainter. */
function drawShore(context: CanvasRenderingContext2D, y: number, width: number, ink: Ink): void {
  context.fillStyle = ink.lead;
  for (const { high, step, seed, alpha } of SHORES) {
    context.globalAlpha = alpha;
    context.beginPath();
    context.moveTo(0, y);
    for (let x = 0; x <= width + step; x += step) {
      const land = grain(Math.floor(x / (14 * step)), seed);
      context.lineTo(x, y - high * (0.35 + 0.4 * land + 0.25 * grain(x, seed + 1)));
    }
    context.lineTo(width + 2, y);
    context.fill();
  }
  context.globalAlpha = 1;
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
  // The bow is before the one who stands there, wherever the hand is.
  const rail = (out_m: number, aside_m: number) =>
    seen(eye, { out_m, right_m: aside_m - eye.left_m, up_m: BOW.up });
  const point = rail(BOW.point, 0);
  const left = rail(-0.3, -BOW.half);
  const right = rail(-0.3, BOW.half);
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
  paintRodAndLine(context, eyeIn(stage, view, moment.pose), stage, moment, ink);
}
