import { formatDepth } from '$lib/scoring';
import type { Ink } from '../palette';
import { soundingMarks, rulerTicks } from '../ruler';
import type { Moment, Stage } from '../stage';
import { fit, heightFor, pixelX, pixelY, type Extent, type View } from '../view';
import { markBait } from './bait';
import { drawBoat } from './boat';
import { brackets } from './brackets';
import { traceLine } from './line';
import { drawRod } from './rod';
import { drawSounding } from './sounding';
import { bedPath, hatchStones, ruleWater, stippleBed } from './texture';
import { drawZebra } from './zebra';

/** The whole line, from the boat on the right to the bait on the left, to scale. */

/** Room behind the hand for boat and sounding line, and beyond the bait, m. */
const BEHIND_M = 4;
const BEYOND_SHARE = 0.05;
/** Bottom below the bait, px: room for the distances. */
const BED_PX = 40;
/** The picture is at most this high for its width: deep water close by would fill the screen. */
const MOST_SHARE = 0.62;

function extentOf({ setup }: Stage): Extent {
  const { rod, start, water } = setup;
  return {
    nearest_m: -BEHIND_M,
    farthest_m: start.bait_x_m * (1 + BEYOND_SHARE) + 0.5,
    lowest_m: -water.depth_m,
    highest_m: rod.pivot_height_m + rod.length_m + 0.35
  };
}

/** Height that the whole line's picture takes at this width, px. */
export function overviewHeight(stage: Stage, width: number): number {
  return heightFor(extentOf(stage), width, MOST_SHARE) + BED_PX;
}

export function overviewView(stage: Stage, width: number, height: number): View {
  return { ...fit(extentOf(stage), width, height - BED_PX), height };
}

export function paintOverviewBack(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Stage,
  ink: Ink
): void {
  const surface = pixelY(view, 0);
  const floor = pixelY(view, -stage.setup.water.depth_m);
  const water = context.createLinearGradient(0, surface, 0, floor);
  water.addColorStop(0, ink.water);
  water.addColorStop(1, ink.deep);
  context.fillStyle = water;
  context.fillRect(0, surface, view.width, view.height - surface);
  ruleWater(context, surface, floor, view.width, {
    colour: ink.rule,
    widest: 13,
    closest: 5,
    alpha: 0.75
  });
  paintBed(context, view, stage, ink);
  drawBoat(context, view, stage.setup.rod.pivot_height_m, ink);
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  context.beginPath();
  context.moveTo(0, surface);
  context.lineTo(view.width, surface);
  context.stroke();
  const depth_m = stage.setup.water.depth_m;
  drawSounding(
    context,
    view,
    -(BEHIND_M - 38 / view.scale),
    stage.heightAt(-BEHIND_M),
    soundingMarks(depth_m, view.scale, stage.units),
    formatDepth(depth_m, stage.units),
    ink
  );
}

function paintBed(context: CanvasRenderingContext2D, view: View, stage: Stage, ink: Ink): void {
  bedPath(context, view, stage.heightAt);
  context.fillStyle = ink.bed;
  context.fill();
  stippleBed(context, view, stage.heightAt, {
    colour: ink.silt,
    cell: 5,
    thickness: BED_PX - 16,
    dot: 0.9
  });
  hatchStones(context, view, stage.setup.bottom.stones, stage.heightAt, ink.silt);
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  bedPath(context, view, stage.heightAt);
  context.stroke();
  const farthest_m = stage.setup.start.bait_x_m;
  drawZebra(
    context,
    rulerTicks(0, farthest_m + 1, view.scale, stage.units),
    (m) => pixelX(view, m),
    view.height - 23,
    ink,
    { bar: 5, font: 12 }
  );
}

export function paintOverview(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Stage,
  moment: Moment,
  ink: Ink,
  closeUp: View
): void {
  const { pose } = moment;
  const hand = { x: pixelX(view, 0), y: pixelY(view, stage.setup.rod.pivot_height_m) };
  const tip = { x: pixelX(view, pose.x[0]), y: pixelY(view, pose.z[0]) };
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.1;
  context.beginPath();
  traceLine(context, view, pose, moment.isHidden);
  context.stroke();
  drawRod(context, hand, tip, tip, Math.max(2, 0.045 * view.scale), ink);
  frameCloseUp(context, view, closeUp, ink);
  if (moment.isHidden) return;
  const last = pose.x.length - 1;
  const x = pixelX(view, pose.x[last]);
  markBait(context, x, pixelY(view, pose.z[last]) - 4, 4, pose.isTouching, ink);
}

/** Shows which piece of the water the close-up shows. */
function frameCloseUp(
  context: CanvasRenderingContext2D,
  view: View,
  closeUp: View,
  ink: Ink
): void {
  const ratio = view.scale / closeUp.scale;
  const left = view.x0 - closeUp.x0 * ratio;
  const top = view.y0 - closeUp.y0 * ratio;
  brackets(context, left, top, closeUp.width * ratio, closeUp.height * ratio, ink.ink);
}
