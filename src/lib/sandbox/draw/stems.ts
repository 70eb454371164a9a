import type { Ink } from '../palette';
import { mixed, type Between } from '../scenery/scenery';
import type { Backdrop } from '../stage';
import { pixelX, pixelY, type View } from '../view';
import { grain } from './texture';

/** Twigs of a brush's stalk: where they leave it and how far they reach, as shares of its height. */
const TWIGS = [
  [0.42, 0.26],
  [0.58, -0.24],
  [0.7, 0.2],
  [0.84, -0.14]
] as const;
/** An untouched stem stands this much out of plumb at most, as a share of its height. */
const SWAY = 0.16;

/** Stalks and blades; one that a bait loads is bent by `leans`, m towards the angler. */
export function drawStems(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  leans: Between | null,
  ink: Ink
): void {
  if (stage.stems.length === 0) return;
  const isBrush = stage.setup.bottom.ground?.kind === 'brush';
  context.strokeStyle = isBrush ? ink.silt : ink.reed;
  const width = isBrush ? Math.min(Math.max(1.25, 0.006 * view.scale), 4) : 1.25;
  const stalks = stage.stems.map((stem, i) => {
    const sway_m = SWAY * (grain(i, 3) - 0.5) * stem.height_m;
    const lean_m = Math.max(leans ? mixed(leans, i) : 0, sway_m);
    return {
      x: pixelX(view, stem.x_m),
      y: pixelY(view, stage.heightAt(stem.x_m)),
      lean: lean_m * view.scale,
      up: Math.sqrt(Math.max(stem.height_m ** 2 - lean_m ** 2, 0)) * view.scale
    };
  });
  strokeAll(context, stalks, width, stalkPath);
  if (isBrush) strokeAll(context, stalks, Math.max(width / 2, 1), twigsPath);
}

/** A stem in pixels: its foot, how far its top is to the right of it, and how far up. */
interface Stalk {
  readonly x: number;
  readonly y: number;
  readonly lean: number;
  readonly up: number;
}

function strokeAll(
  context: CanvasRenderingContext2D,
  stalks: readonly Stalk[],
  width: number,
  path: (context: CanvasRenderingContext2D, stalk: Stalk) => void
): void {
  context.lineWidth = width;
  context.beginPath();
  for (const stalk of stalks) path(context, stalk);
  context.stroke();
}

/** A stalk held at its foot and drawn at its top: the curve of an end-loaded beam, root upright. */
function stalkPath(context: CanvasRenderingContext2D, { x, y, lean, up }: Stalk): void {
  context.moveTo(x, y);
  context.quadraticCurveTo(x, y - up / 3, x + lean, y - up);
}

function twigsPath(context: CanvasRenderingContext2D, { x, y, lean, up }: Stalk): void {
  for (const [share, reach] of TWIGS) {
    // On the stalk's curve.
    const footX = x + lean * share * share;
    const footY = y - up * ((2 / 3) * share * (1 - share) + share * share);
    const out = reach * up;
    const rise = 0.75 * Math.abs(out);
    context.moveTo(footX, footY);
    context.quadraticCurveTo(footX + 0.6 * out, footY - 0.3 * rise, footX + out, footY - rise);
  }
}
