import { BED_PX, STRIP_PX } from '../close-up';
import type { Ink } from '../palette';
import { rulerTicks } from '../ruler';
import type { SceneryNow } from '../scenery/scenery';
import { isShownDown, type Moment, type Backdrop } from '../stage';
import { metresX, pixelX, pixelY, type View } from '../view';
import { setFigures } from './type';
import { drawBait } from './bait';
import { paintBed } from './bed';
import { drawGhost, nameGhost } from './ghost';
import { drawFish } from './fish';
import { drawGoals, drawHopCount } from './goals';
import { drawHang, showsHang } from './hang';
import { drawLine } from './line';
import { drawPassed } from './passed';
import { drawStems } from './stems';
import { drawRuler } from './ruler';
import { drawTrack } from './track';
import { drawClouds, drawPebbles } from './loose';
import { paintWater } from './water';

/** The close-up of the bait on the bottom, with its ruler. */

export function paintBottomBack(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const floor = view.height - STRIP_PX - BED_PX;
  paintWater(context, view, 0, floor, { widest: 16, closest: 9, alpha: 0.55 }, ink);
  paintBed(context, view, stage, { cell: 6, thickness: BED_PX + 4, dot: 1.25 }, ink);
  drawTravels(context, view, stage, ink);
  drawHeights(context, view, stage, ink);
  drawStart(context, view, stage, ink);
  drawGoals(context, view, stage, ink);
}

/** Travels from the bait's start along the foot of the picture. */
function drawTravels(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const towards = Math.sign(stage.bait.x_m);
  const travelAt = (px: number) => towards * (stage.bait.x_m - metresX(view, px));
  const beyond_m = 0.5 * travelAt(view.width);
  drawRuler(
    context,
    rulerTicks(travelAt(0) - beyond_m, travelAt(view.width) + beyond_m, view.scale, stage.units),
    (m) => pixelX(view, stage.bait.x_m - towards * m),
    { top: view.height - STRIP_PX, width: view.width, height: STRIP_PX, bar: 7, font: 15 },
    ink
  );
}

/** Heights above the bottom, up the left edge. */
function drawHeights(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const top_m = (pixelY(view, stage.bait.z_m) - 14) / view.scale;
  const ticks = rulerTicks(0, top_m, view.scale, stage.units);
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  setFigures(context, ink, { px: 12, weight: 500, align: 'left' });
  context.beginPath();
  for (const { at_m, rank, label } of ticks) {
    if (at_m === 0) continue;
    const y = pixelY(view, stage.bait.z_m + at_m);
    context.moveTo(0, y);
    context.lineTo(rank === 2 ? 10 : rank === 1 ? 7 : 4, y);
    if (rank === 2) context.fillText(label, 14, y + 1);
  }
  context.stroke();
}

/** Where the bait lay before the hand moved. */
function drawStart(context: CanvasRenderingContext2D, view: View, stage: Backdrop, ink: Ink): void {
  const x = pixelX(view, stage.bait.x_m);
  const floor = pixelY(view, stage.bait.z_m);
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  context.setLineDash([3, 4]);
  context.beginPath();
  context.moveTo(x, floor + BED_PX);
  context.lineTo(x, floor - Math.min(view.height * 0.3, 64));
  context.stroke();
  context.setLineDash([]);
}

export function paintBottom(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  /** None while it is out of sight. */
  scenery: SceneryNow | null,
  ink: Ink
): void {
  const { pose } = moment;
  drawStems(context, view, stage, scenery?.leans ?? null, ink);
  if (!scenery) return sayHidden(context, view, stage, ink);
  drawPebbles(context, view, scenery, ink);
  drawHopCount(context, view, stage, moment, ink);
  if (showsHang(stage)) drawHang(context, view, moment, ink);
  drawFish(context, view, stage, moment, ink);
  stage.ghosts.forEach((ghost, age) => drawGhost(context, view, stage, ghost, age, ink));
  const last = pose.x.length - 1;
  if (stage.ghosts.length > 0) nameGhost(context, view, stage, stage.ghosts[0], pose.x[last], ink);
  drawTrack(context, view, stage, moment, ink);
  drawLine(context, view, pose, false, ink);
  drawBait(
    context,
    pixelX(view, pose.x[last]),
    pixelY(view, pose.z[last]),
    view.scale,
    {
      radius_m: stage.baitRadius_m,
      isTouching: isShownDown(stage, moment),
      strands: scenery.strands
    },
    ink
  );
  drawClouds(context, view, scenery, ink);
  if (moment.isPassed) drawPassed(context, view, moment, ink);
}

function sayHidden(context: CanvasRenderingContext2D, view: View, stage: Backdrop, ink: Ink): void {
  context.font = `italic 400 17px ${ink.words}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillStyle = ink.inkSoft;
  const middle = pixelY(view, stage.bait.z_m) / 2;
  context.fillText('Out of sight until the rod is still.', view.width / 2, middle);
}
