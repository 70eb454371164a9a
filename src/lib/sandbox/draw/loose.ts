import type { Ink } from '../palette';
import { mixed, type SceneryNow } from '../scenery/scenery';
import type { Puff } from '../scenery/silt';
import { pixelX, pixelY, type View } from '../view';
import { grain } from './texture';

/** Clouds of fines and loose pebbles. */

/** A cloud is drawn until it has thinned this many times to a third. */
const THINNED = 2.5;
/** A cloud's dots: so many, and more for larger ones, a pixel of radius. */
const DOTS = 10;
const DOTS_A_PX = 0.8;

export function drawClouds(
  context: CanvasRenderingContext2D,
  view: View,
  { puffs, t_s }: SceneryNow,
  ink: Ink
): void {
  context.fillStyle = ink.silt;
  puffs.forEach((puff, i) => {
    const age = (t_s - puff.t_s) / puff.settles_s;
    if (age >= 0 && age < THINNED) drawCloud(context, view, puff, i, age);
  });
}

/** A cloud spreads with the root of time, as what mixes does, and thins by losing dots. */
function drawCloud(
  context: CanvasRenderingContext2D,
  view: View,
  puff: Puff,
  seed: number,
  age: number
): void {
  const radius = puff.radius_m * view.scale * (0.5 + Math.sqrt(age));
  const left = Math.exp(-age);
  const x0 = pixelX(view, puff.x_m);
  const y0 = pixelY(view, puff.z_m);
  const dots = Math.min(DOTS + DOTS_A_PX * puff.radius_m * view.scale, 40);
  for (let dot = 0; dot < dots; dot++) {
    if (grain(seed, dot) > left) continue;
    const out = radius * Math.sqrt(grain(dot + 11, seed + 5));
    const turn = Math.PI * grain(dot, seed + 29);
    context.fillRect(x0 + out * Math.cos(turn), y0 - 0.75 * out * Math.sin(turn) - 1.5, 1.5, 1.5);
  }
}

export function drawPebbles(
  context: CanvasRenderingContext2D,
  view: View,
  { pebbles, radii_m }: SceneryNow,
  ink: Ink
): void {
  if (radii_m.length === 0) return;
  context.beginPath();
  radii_m.forEach((radius_m, i) => {
    const x = pixelX(view, mixed(pebbles, 3 * i));
    if (x < -10 || x > view.width + 10) return;
    const y = pixelY(view, mixed(pebbles, 3 * i + 1));
    const radius = Math.max(radius_m * view.scale, 1.5);
    const turn = mixed(pebbles, 3 * i + 2);
    context.moveTo(x + 1.15 * radius * Math.cos(turn), y + 1.15 * radius * Math.sin(turn));
    context.ellipse(x, y, 1.15 * radius, 0.85 * radius, turn, 0, 2 * Math.PI);
  });
  context.fillStyle = ink.bed;
  context.fill();
  context.strokeStyle = ink.ink;
  context.lineWidth = 1;
  context.stroke();
}
