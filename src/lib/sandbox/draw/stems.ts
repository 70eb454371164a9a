import type { Ink } from '../palette';
import { mixed, type Between } from '../scenery/scenery';
import type { Stage } from '../stage';
import { pixelX, pixelY, type View } from '../view';
import { grain } from './texture';

/** Twigs of a brush's stalk: where they leave it and how far they reach, as shares of its height. */
const TWIGS = [
  [0.45, 0.3],
  [0.62, -0.26],
  [0.8, 0.2]
] as const;
/** An untouched stem stands this much out of plumb at most, as a share of its height. */
const SWAY = 0.16;

/** Stalks and blades; one that a bait loads is bent by `leans`, m towards the angler. */
export function drawStems(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Stage,
  leans: Between | null,
  ink: Ink
): void {
  if (stage.stems.length === 0) return;
  const isBrush = stage.setup.bottom.ground?.kind === 'brush';
  context.strokeStyle = isBrush ? ink.silt : ink.reed;
  context.lineWidth = isBrush ? Math.min(Math.max(1.25, 0.006 * view.scale), 4) : 1.25;
  context.beginPath();
  stage.stems.forEach((stem, i) => {
    const sway_m = SWAY * (grain(i, 3) - 0.5) * stem.height_m;
    const lean_m = Math.max(leans ? mixed(leans, i) : 0, sway_m);
    const root = { x: pixelX(view, stem.x_m), y: pixelY(view, stage.heightAt(stem.x_m)) };
    const up = Math.sqrt(Math.max(stem.height_m ** 2 - lean_m ** 2, 0)) * view.scale;
    drawStalk(context, root, lean_m * view.scale, up, isBrush);
  });
  context.stroke();
}

/** A stalk held at its foot and drawn at its top: the curve of an end-loaded beam, root upright. */
function drawStalk(
  context: CanvasRenderingContext2D,
  root: { x: number; y: number },
  lean: number,
  up: number,
  isBrush: boolean
): void {
  context.moveTo(root.x, root.y);
  context.quadraticCurveTo(root.x, root.y - up / 3, root.x + lean, root.y - up);
  if (!isBrush) return;
  for (const [share, reach] of TWIGS) {
    const x = root.x + lean * share * share;
    const y = root.y - up * share;
    context.moveTo(x, y);
    context.lineTo(x + reach * up, y - 0.55 * Math.abs(reach) * up);
  }
}
