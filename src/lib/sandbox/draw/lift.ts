import { clockHourToDeg, degToRad, tipOf, type Trace } from '$lib/model';
import type { Ink } from '../palette';
import type { Pose } from '../pose';
import type { Moment, Backdrop } from '../stage';
import { fitView, pixelX, pixelY, type View } from '../view';
import { setFigures } from './type';
import { drawBoat } from './boat';
import { drawLine } from './line';
import { drawLineMarks, marksOn } from './line-marks';
import { drawRod } from './rod';
import { drawSurface, paintWater } from './water';

/** The rod at the boat from the side, with the hours of the clock it is turned through. */

const HOURS = [9, 10, 11, 12] as const;
/** Room for the dial's hours outside the rod's reach, px. */
const DIAL_PX = 40;
/** Fine divisions of an hour on the dial. */
const PARTS_AN_HOUR = 4;

export function liftView(stage: Backdrop, width: number, height: number): View {
  const { length_m, pivot_height_m } = stage.setup.rod;
  const extent = {
    nearest_m: -0.95,
    farthest_m: length_m,
    lowest_m: -0.25,
    highest_m: pivot_height_m + length_m
  };
  const view = fitView(extent, width - DIAL_PX, height - DIAL_PX);
  return { ...view, width, height, x0: view.x0 + DIAL_PX, y0: view.y0 + DIAL_PX };
}

export function paintLiftBack(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const ruling = { widest: 8, closest: 6, alpha: 0.75 };
  paintWater(context, view, pixelY(view, 0), view.height, ruling, ink);
  drawBoat(context, view, stage.setup.rod.pivot_height_m, ink);
  drawSurface(context, view, ink);
  drawDial(context, view, stage, ink);
}

/** What is written keeps so far from the picture's edge, px. */
const EDGE_PX = 4;

/** The dial round the hand, outside the rod's reach, px. */
function dialOf(view: View, { setup }: Backdrop) {
  const x = pixelX(view, 0);
  const y = pixelY(view, setup.rod.pivot_height_m);
  const spot = (deg: number, r: number) => ({
    x: x - r * Math.cos(degToRad(deg)),
    y: y - r * Math.sin(degToRad(deg))
  });
  return { x, y, radius: setup.rod.length_m * view.scale + 7, spot };
}

function drawDial(context: CanvasRenderingContext2D, view: View, stage: Backdrop, ink: Ink): void {
  const { x, y, radius, spot } = dialOf(view, stage);
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  context.beginPath();
  context.arc(x, y, radius, Math.PI, 1.5 * Math.PI);
  for (let i = 0; i <= (HOURS.length - 1) * PARTS_AN_HOUR; i++) {
    const deg = (30 / PARTS_AN_HOUR) * i;
    const from = spot(deg, radius);
    const to = spot(deg, radius + (i % PARTS_AN_HOUR === 0 ? 9 : 4));
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
  }
  context.stroke();
}

/** A line that runs behind an hour is not drawn through it: so far round its letters, px. */
const HALO_PX = 5;

function drawHours(context: CanvasRenderingContext2D, view: View, stage: Backdrop, ink: Ink): void {
  const { radius, spot } = dialOf(view, stage);
  setFigures(context, ink, { px: 15, weight: 600, align: 'center' });
  context.strokeStyle = ink.raised;
  context.lineWidth = HALO_PX;
  for (const hour of HOURS) {
    const { x: tx, y: ty } = spot(clockHourToDeg(hour), radius + 21);
    // One of them says what they all are, in the picture whole.
    const text = hour === HOURS[3] ? `${hour} o’clock` : String(hour);
    const most = view.width - EDGE_PX - context.measureText(text).width / 2;
    context.strokeText(text, Math.min(tx, most), ty);
    context.fillText(text, Math.min(tx, most), ty);
  }
}

export function paintLift(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  ink: Ink
): void {
  const { pose } = moment;
  const { pivot_height_m } = stage.setup.rod;
  const hand = { x: pixelX(view, 0), y: pixelY(view, pivot_height_m) };
  markGhosts(context, view, stage, ink);
  drawWay(context, view, stage, pose.elevation_deg, ink);
  drawLine(context, view, pose, moment.isHidden, ink);
  if (stage.setup.start.spool === 'free') drawRunningMarks(context, view, pose, ink);
  drawHours(context, view, stage, ink);
  const stiff = { x: 0, z: 0 };
  tipOf(stage.setup, pose.elevation_deg, pose.azimuth_deg, stiff);
  const unbent = { x: pixelX(view, stiff.x), y: pixelY(view, stiff.z) };
  const tip = { x: pixelX(view, pose.x[0]), y: pixelY(view, pose.z[0]) };
  drawRod(context, hand, unbent, tip, 5, ink);
}

/** The marks of a line that runs out, on what of it is over the water. */
function drawRunningMarks(
  context: CanvasRenderingContext2D,
  view: View,
  { x, z, given_m }: Pose,
  ink: Ink
): void {
  const points = [...x].map((out_m, i) => ({ out_m, right_m: 0, up_m: z[i] }));
  const marks = marksOn(points, given_m).filter(({ up_m }) => up_m >= 0);
  const places = marks.map(({ out_m, up_m }) => ({
    x: pixelX(view, out_m),
    y: pixelY(view, up_m)
  }));
  drawLineMarks(context, places, ink);
}

/** The tip's way from where it started: a broad arc inside the dial. */
function drawWay(
  context: CanvasRenderingContext2D,
  view: View,
  { setup, start }: Backdrop,
  elevation_deg: number,
  ink: Ink
): void {
  const radius = setup.rod.length_m * view.scale + 2;
  const x = pixelX(view, 0);
  const y = pixelY(view, setup.rod.pivot_height_m);
  const from = Math.PI + degToRad(start.elevation_deg);
  const to = Math.PI + degToRad(elevation_deg);
  context.strokeStyle = ink.reed;
  context.lineWidth = 4;
  context.lineCap = 'butt';
  context.beginPath();
  context.arc(x, y, radius, Math.min(from, to), Math.max(from, to));
  if (from !== to) context.stroke();
  context.lineCap = 'round';
}

/** Where the tip came to rest in the tries before. */
function markGhosts(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  context.strokeStyle = ink.lead;
  context.lineWidth = 1.25;
  for (const ghost of stage.ghosts) {
    const { x, y } = lastTip(view, ghost);
    context.beginPath();
    context.arc(x, y, 4, 0, 2 * Math.PI);
    context.stroke();
  }
}

function lastTip(view: View, ghost: Trace): { x: number; y: number } {
  const last = ghost.tip_x_m.length - 1;
  return { x: pixelX(view, ghost.tip_x_m[last]), y: pixelY(view, ghost.tip_z_m[last]) };
}
