import { degToRad } from '$lib/model';
import { formatDepth } from '$lib/scoring';
import type { Ink } from '../palette';
import { soundingMarks, rulerTicks } from '../ruler';
import { isShownDown, type Moment, type Backdrop } from '../stage';
import { fitView, heightFor, metresX, pixelX, pixelY, type Extent, type View } from '../view';
import { markBait } from './bait';
import { paintBed } from './bed';
import { drawBoat } from './boat';
import { brackets } from './brackets';
import { drawLine } from './line';
import { drawRod } from './rod';
import { drawRuler } from './ruler';
import { drawSounding } from './sounding';
import { drawStems } from './stems';
import { drawSurface, paintWater } from './water';

/** The whole line, from the boat on the right to the bait on the left, to scale. */

/** Room behind the hand for the boat, m, and behind that for the sounding line, px. */
const BEHIND_M = 2.8;
const SOUNDING_PX = 62;
/** Room beyond the bait, as a share of the cast. */
const BEYOND_SHARE = 0.05;
/** Ground below the bait, and under it the distances, px. */
const BED_PX = 18;
const STRIP_PX = 24;
const FOOT_PX = BED_PX + STRIP_PX;
/** An angler's head over the gripping hand, m. */
const HEAD_M = 0.95;
/**
 * The picture is at most this high for its width and for the window's height: deep water close by
 * would fill the screen, and the rod below would be out of reach.
 */
const MOST_SHARE_OF_WIDTH = 0.62;
const MOST_SHARE_OF_WINDOW = 0.38;

function extentOf({ setup, plane, start: { elevation_deg } }: Backdrop): Extent {
  const { rod, start, water } = setup;
  const up_m =
    plane === 'lift'
      ? rod.length_m
      : Math.max(rod.length_m * Math.sin(degToRad(elevation_deg)), HEAD_M);
  return {
    nearest_m: -BEHIND_M,
    farthest_m: start.bait_x_m * (1 + BEYOND_SHARE) + 0.5,
    lowest_m: -water.depth_m,
    highest_m: rod.pivot_height_m + up_m + 0.35
  };
}

/** Height that the whole line's picture takes at this width in a window of this height, px. */
export function overviewHeight(stage: Backdrop, width: number, windowHeight: number): number {
  const most = Math.min(width * MOST_SHARE_OF_WIDTH, windowHeight * MOST_SHARE_OF_WINDOW);
  return heightFor(extentOf(stage), width - SOUNDING_PX, most) + FOOT_PX;
}

export function overviewView(stage: Backdrop, width: number, height: number): View {
  return { ...fitView(extentOf(stage), width - SOUNDING_PX, height - FOOT_PX), width, height };
}

export function paintOverviewBack(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const surface = pixelY(view, 0);
  const floor = pixelY(view, -stage.setup.water.depth_m);
  paintWater(context, view, surface, floor, { widest: 13, closest: 5, alpha: 0.75 }, ink);
  paintBed(context, view, stage, { cell: 4.5, thickness: BED_PX, dot: 0.9 }, ink);
  drawStems(context, view, stage, null, ink);
  drawDistances(context, view, stage, ink);
  drawBoat(context, view, stage.setup.rod.pivot_height_m, ink);
  drawSurface(context, view, ink);
  const depth_m = stage.setup.water.depth_m;
  drawSounding(
    context,
    view,
    metresX(view, view.width - SOUNDING_PX + 8),
    stage.heightAt(-BEHIND_M),
    soundingMarks(depth_m, view.scale, stage.units),
    formatDepth(depth_m, stage.units),
    ink
  );
}

/** Distances from the rod hand along the foot of the picture. */
function drawDistances(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const far_m = metresX(view, 0);
  const label_px = Math.min(84, view.width / 6);
  drawRuler(
    context,
    rulerTicks(-far_m, 2 * far_m, view.scale, stage.units, label_px).filter(
      ({ at_m }) => at_m >= 0
    ),
    (m) => pixelX(view, m),
    { top: view.height - STRIP_PX, width: view.width, height: STRIP_PX, bar: 5, font: 12 },
    ink
  );
}

export function paintOverview(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  ink: Ink,
  closeUp: View
): void {
  const { pose } = moment;
  const hand = { x: pixelX(view, 0), y: pixelY(view, stage.setup.rod.pivot_height_m) };
  const tip = { x: pixelX(view, pose.x[0]), y: pixelY(view, pose.z[0]) };
  drawLine(context, view, pose, moment.isHidden, ink);
  drawRod(context, hand, tip, tip, Math.max(2, 0.045 * view.scale), ink);
  frameCloseUp(context, view, closeUp, ink);
  if (moment.isHidden) return;
  const last = pose.x.length - 1;
  const x = pixelX(view, pose.x[last]);
  markBait(context, x, pixelY(view, pose.z[last]) - 4, 4, isShownDown(stage, moment), ink);
}

/** Shows which piece of the water the close-up shows; of one that is larger than the picture no corner tells it. */
function frameCloseUp(
  context: CanvasRenderingContext2D,
  view: View,
  closeUp: View,
  ink: Ink
): void {
  const ratio = view.scale / closeUp.scale;
  const left = view.x0 - closeUp.x0 * ratio;
  const top = view.y0 - closeUp.y0 * ratio;
  const [width, height] = [closeUp.width * ratio, closeUp.height * ratio];
  if (left < 0 || top < 0 || left + width > view.width || top + height > view.height) return;
  brackets(context, left, top, width, height, ink.ink);
}
