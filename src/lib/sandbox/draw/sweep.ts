import { degToRad } from '$lib/model';
import { formatDepth } from '$lib/scoring';
import type { Ink } from '../palette';
import type { Pose } from '../pose';
import type { Moment, Backdrop } from '../stage';
import { LEAST_PX_A_M, type View } from '../view';
import { setFigures } from './type';
import { drawDeck } from './deck';
import { lineArcOf } from './line';
import { drawRod } from './rod';
import { ruleWater } from './texture';

/**
 * The rod at the boat from above: a low rod turned to the side. What the line feels is only how far
 * the tip goes along the way to the bait; a dimension on that axis shows it beside the arc.
 */

/** Room for the degrees outside the rod's reach, px, and for the angler behind the hand, m. */
const DIAL_PX = 32;
const BEHIND_M = 0.75;

/** What is written beside the dial takes so much, px; where there is less the ruler above tells it. */
const BESIDE_PX = 120;
/** Half of a picture lower than this has no room for both, px. */
const LOW_PX = 200;

/** Here x is along the way to the bait and "z" across it, to the angler's right. */
export function sweepView(stage: Backdrop, width: number, height: number): View {
  const reach = stage.setup.rod.length_m;
  const fitting = Math.min((width - DIAL_PX) / (reach + BEHIND_M), (height / 2 - DIAL_PX) / reach);
  const scale = Math.max(fitting, LEAST_PX_A_M);
  return { width, height, scale, x0: width - BEHIND_M * scale, y0: height / 2 };
}

/** Where the tip of a rod with this reach is seen, px. */
function seenTip(view: View, reach_m: number, azimuth_deg: number): { x: number; y: number } {
  return {
    x: view.x0 - reach_m * Math.cos(degToRad(azimuth_deg)) * view.scale,
    y: view.y0 - reach_m * Math.sin(degToRad(azimuth_deg)) * view.scale
  };
}

export function paintSweepBack(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  context.fillStyle = ink.water;
  context.fillRect(0, 0, view.width, view.height);
  ruleWater(context, 0, view.height, view.width, {
    colour: ink.rule,
    widest: 15,
    closest: 15,
    alpha: 0.6
  });
  drawDeck(context, view, ink);
  drawProtractor(context, view, stage, ink);
  drawBearing(context, view, stage, ink);
}

function drawProtractor(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  const radius = dialRadius(view, stage);
  const isNarrow = roomBeside(view, stage) < BESIDE_PX;
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  setFigures(context, ink, { px: 12, weight: 500, align: 'center' });
  context.beginPath();
  context.arc(view.x0, view.y0, radius, Math.PI / 2, 1.5 * Math.PI);
  for (let deg = -90; deg <= 90; deg += 10) {
    const cos = Math.cos(degToRad(deg));
    const sin = Math.sin(degToRad(deg));
    const long = deg % 30 === 0 ? 8 : 4;
    context.moveTo(view.x0 - radius * cos, view.y0 - radius * sin);
    context.lineTo(view.x0 - (radius + long) * cos, view.y0 - (radius + long) * sin);
    // In a narrow picture the tip's way is written over the lower half of the dial.
    const isCovered = isNarrow && deg < 0;
    if (deg % 30 === 0 && deg !== 0 && Math.abs(deg) < 90 && !isCovered) {
      const out = radius + 20;
      context.fillText(`${Math.abs(deg)}°`, view.x0 - out * cos, view.y0 - out * sin);
    }
  }
  context.stroke();
}

function drawBearing(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  context.setLineDash([2, 5]);
  context.beginPath();
  context.moveTo(view.x0, view.y0);
  context.lineTo(0, view.y0);
  context.stroke();
  context.setLineDash([]);
  // In a low picture the words of the tip stand there.
  if (roomBeside(view, stage) < BESIDE_PX || view.height < LOW_PX) return;
  // Where it was cast to: this stands still while the bait comes in.
  const text = `from ${formatDepth(stage.setup.start.bait_x_m, stage.units)} out`;
  context.font = `italic 400 14px ${ink.words}`;
  context.textAlign = 'left';
  context.textBaseline = 'alphabetic';
  context.fillStyle = ink.inkSoft;
  context.fillText(text, 12, view.y0 + 18);
}

export function paintSweep(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  ink: Ink
): void {
  const { azimuth_deg, elevation_deg } = moment.pose;
  const reach_m = reachOfRod(stage, elevation_deg);
  const from = seenTip(view, reach_m, stage.start.azimuth_deg);
  const tip = seenTip(view, reach_m, azimuth_deg);
  drawArc(context, view, reach_m, stage.start.azimuth_deg, azimuth_deg, ink);
  drawGain(context, view, from, tip, ink);
  drawLineFrom(context, view, tip, moment.pose, ink);
  drawRod(context, { x: view.x0, y: view.y0 }, tip, tip, 5, ink);
}

/** To the bait out there: straight where it is tight, in an arc where it is slack. */
function drawLineFrom(
  context: CanvasRenderingContext2D,
  view: View,
  tip: { x: number; y: number },
  pose: Pose,
  ink: Ink
): void {
  const far = { x: view.x0 - Math.abs(pose.x[pose.x.length - 1]) * view.scale, y: view.y0 };
  const way = Math.hypot(far.x - tip.x, far.y - tip.y);
  // The curve's own point stands twice as far aside as its middle.
  const aside = (2 * lineArcOf(pose) * view.scale) / way;
  context.strokeStyle = ink.ink;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(tip.x, tip.y);
  context.quadraticCurveTo(
    (tip.x + far.x) / 2 + aside * (tip.y - far.y),
    (tip.y + far.y) / 2 - aside * (tip.x - far.x),
    far.x,
    far.y
  );
  context.stroke();
}

function drawArc(
  context: CanvasRenderingContext2D,
  view: View,
  reach_m: number,
  from_deg: number,
  to_deg: number,
  ink: Ink
): void {
  if (from_deg === to_deg) return;
  const from = Math.PI + degToRad(Math.min(from_deg, to_deg));
  const to = Math.PI + degToRad(Math.max(from_deg, to_deg));
  context.strokeStyle = ink.reed;
  context.lineWidth = 2;
  context.lineCap = 'butt';
  context.beginPath();
  context.arc(view.x0, view.y0, reach_m * view.scale + 2, from, to);
  context.stroke();
  context.lineCap = 'round';
}

/** How far along the way to the bait the tip has come, laid off on that axis: not the arc, and not the finger's way. */
function drawGain(
  context: CanvasRenderingContext2D,
  view: View,
  from: { x: number; y: number },
  tip: { x: number; y: number },
  ink: Ink
): void {
  if (Math.abs(tip.x - from.x) < 1) return;
  context.strokeStyle = ink.lead;
  context.lineWidth = 1;
  context.setLineDash([1, 4]);
  context.beginPath();
  for (const { x, y } of [from, tip]) {
    context.moveTo(x, y);
    context.lineTo(x, view.y0);
  }
  context.stroke();
  context.setLineDash([]);
  context.strokeStyle = ink.reed;
  context.lineWidth = 4;
  context.lineCap = 'butt';
  context.beginPath();
  context.moveTo(from.x, view.y0);
  context.lineTo(tip.x, view.y0);
  context.stroke();
  context.lineCap = 'round';
}

function dialRadius(view: View, stage: Backdrop): number {
  return reachOfRod(stage, stage.start.elevation_deg) * view.scale + 7;
}

/** Left of the dial, px. */
function roomBeside(view: View, stage: Backdrop): number {
  return view.x0 - dialRadius(view, stage);
}

function reachOfRod(stage: Backdrop, elevation_deg: number): number {
  return stage.setup.rod.length_m * Math.cos(degToRad(elevation_deg));
}
