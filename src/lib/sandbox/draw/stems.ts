import type { Stem } from '$lib/model';
import type { Ink } from '../palette';
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

/** Where the bait is, m: x, and its height above the bottom; null while out of sight. */
type BaitPlace = { readonly x_m: number; readonly height_m: number } | null;

/** Stalks and blades; one that the bait hangs in is drawn bent by it. */
export function drawStems(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Stage,
  bait: BaitPlace,
  ink: Ink
): void {
  if (stage.stems.length === 0) return;
  const isBrush = stage.setup.bottom.ground?.kind === 'brush';
  const side = Math.sign(stage.bait.x_m);
  context.strokeStyle = isBrush ? ink.silt : ink.reed;
  context.lineWidth = isBrush ? Math.min(Math.max(1.25, 0.006 * view.scale), 4) : 1.25;
  context.beginPath();
  stage.stems.forEach((stem, i) => {
    const lean_m = leanOf(stem, i, side, bait);
    const root = { x: pixelX(view, stem.x_m), y: pixelY(view, stage.heightAt(stem.x_m)) };
    const up = Math.sqrt(Math.max(stem.height_m ** 2 - lean_m ** 2, 0)) * view.scale;
    drawStalk(context, root, lean_m * view.scale, up, isBrush);
  });
  context.stroke();
}

/** How far a stem's top is towards the angler, m: bent by a bait that has not yet slipped off. */
function leanOf(stem: Stem, i: number, side: number, bait: BaitPlace): number {
  const sway_m = SWAY * (grain(i, 3) - 0.5) * stem.height_m;
  if (!bait) return sway_m;
  const past_m = side * (stem.x_m - bait.x_m);
  const holds =
    past_m > 0 &&
    past_m * stem.stiffness_N_per_m < stem.slip_N &&
    bait.height_m ** 2 + past_m ** 2 < stem.height_m ** 2;
  return holds ? Math.max(past_m, sway_m) : sway_m;
}

function drawStalk(
  context: CanvasRenderingContext2D,
  root: { x: number; y: number },
  lean: number,
  up: number,
  isBrush: boolean
): void {
  context.moveTo(root.x, root.y);
  context.quadraticCurveTo(root.x + 0.15 * lean, root.y - 0.55 * up, root.x + lean, root.y - up);
  if (!isBrush) return;
  for (const [share, reach] of TWIGS) {
    const x = root.x + lean * share * share;
    const y = root.y - up * share;
    context.moveTo(x, y);
    context.lineTo(x + reach * up, y - 0.55 * Math.abs(reach) * up);
  }
}
