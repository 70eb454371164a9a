import { onRod, seen, type Eye, type Space } from '../eye';
import type { Ink } from '../palette';
import type { Backdrop, Moment } from '../stage';
import { drawLineMarks, marksOn } from './line-marks';

/** The rod's thickness at the hand and at the tip, m. */
const BUTT_M = 0.022;
const TIP_M = 0.004;
const PIECES = 16;

/** The rod and the dry part of the line, as they are now. */
export function paintRodAndLine(
  context: CanvasRenderingContext2D,
  eye: Eye,
  stage: Backdrop,
  moment: Moment,
  ink: Ink
): void {
  const { placeOn, line } = rodAndLineAt(stage, moment);
  drawLineOut(context, eye, line, ink);
  if (stage.setup.start.spool === 'free') {
    const marks = marksOn(line, moment.pose.given_m);
    drawLineMarks(
      context,
      marks.map((place) => seen(eye, place)),
      ink
    );
  }
  drawRodAway(context, eye, placeOn, ink);
}

/** A place on the rod, `share` of the way from the hand to the tip, and the dry line from there. */
export function rodAndLineAt(stage: WhatIsHeld, moment: Pick<Moment, 'pose'>) {
  const placeOn = bentRod(stage, moment);
  return { placeOn, line: dryLine(stage, moment, placeOn(1)) };
}

type WhatIsHeld = Pick<Backdrop, 'setup' | 'bait'>;

/**
 * What a rod gives at its tip where its stiffness is not said, N/m: 1 N moves it 3 cm. Common practice, no
 * source. For the eye alone: the model's rod is stiff there, and its pull is the true one.
 */
const NOMINAL_STIFFNESS_N_PER_M = 30;
/** No rod is drawn bent further than this share of its length. */
const MOST_BENT = 0.35;
/** Rings where the line goes into the water. */
const RINGS_PX = [5, 10] as const;

/**
 * The dry line from `tip` to where it goes into the water. The model's line lies in one upright plane
 * through the tip; here it is stretched from the tip that is drawn to where the line meets the water.
 */
function dryLine(
  { bait }: WhatIsHeld,
  { pose: { x, z } }: Pick<Moment, 'pose'>,
  tip: Space
): Space[] {
  const side = Math.sign(bait.x_m);
  const wet = Math.max(
    z.findIndex((height) => height < 0),
    1
  );
  const share = z[wet - 1] > 0 ? z[wet - 1] / (z[wet - 1] - z[wet]) : 1;
  const meets_m = side * (x[wet - 1] + share * (x[wet] - x[wet - 1]));
  return Array.from({ length: wet + 1 }, (_, i) => {
    const way_m = (i === wet ? meets_m : side * x[i]) - side * x[0];
    const along = Math.min(Math.max(way_m / Math.max(meets_m - side * x[0], 1e-6), 0), 1);
    return {
      out_m: tip.out_m + along * (meets_m - tip.out_m),
      right_m: tip.right_m * (1 - along),
      up_m: i === wet ? 0 : z[i] + (tip.up_m - z[0]) * (1 - along)
    };
  });
}

/** The rod under the pull of the line: a place on it, `share` of the way from the hand to the tip. */
function bentRod(stage: WhatIsHeld, moment: Pick<Moment, 'pose'>): (share: number) => Space {
  const { rod } = stage.setup;
  const { pose } = moment;
  const tip = onRod(stage.setup, pose, 1);
  const [, next] = dryLine(stage, moment, tip);
  const line = {
    out_m: next.out_m - tip.out_m,
    right_m: next.right_m - tip.right_m,
    up_m: next.up_m - tip.up_m
  };
  const length_m = Math.hypot(line.out_m, line.right_m, line.up_m) || 1;
  const stiffness = rod.tip_stiffness_N_per_m ?? NOMINAL_STIFFNESS_N_PER_M;
  const give_m = Math.min(pose.tipTension_N / stiffness, MOST_BENT * rod.length_m);
  return (share) => {
    const straight = onRod(stage.setup, pose, share);
    // A cantilever with its load at the end: Gere and Goodno, Mechanics of Materials, table of deflections.
    const part = ((share * share * (3 - share)) / 2) * (give_m / length_m);
    return {
      out_m: straight.out_m + part * line.out_m,
      right_m: straight.right_m + part * line.right_m,
      up_m: straight.up_m + part * line.up_m
    };
  };
}

/** The dry part of the line, and the ring it makes where it goes into the water. */
function drawLineOut(
  context: CanvasRenderingContext2D,
  eye: Eye,
  points: readonly Space[],
  ink: Ink
): void {
  const places = points.map((point) => seen(eye, point));
  const line = smooth(places);
  // Light under dark, so that it stands out from sky and ripples alike.
  context.strokeStyle = ink.raised;
  context.lineWidth = 4;
  context.stroke(line);
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.75;
  context.stroke(line);
  const end = places[places.length - 1];
  context.lineWidth = 1;
  for (const radius of RINGS_PX) {
    context.beginPath();
    context.ellipse(end.x, end.y, radius, radius / 3, 0, 0, 2 * Math.PI);
    context.stroke();
  }
}

/** Through the middles between the places, bent at them: a line has no kinks where its nodes are. */
function smooth(places: readonly { x: number; y: number }[]): Path2D {
  const path = new Path2D();
  const [first] = places;
  path.moveTo(first.x, first.y);
  places.slice(1, -1).forEach(({ x, y }, i) => {
    const next = places[i + 2];
    path.quadraticCurveTo(x, y, (x + next.x) / 2, (y + next.y) / 2);
  });
  const last = places[places.length - 1];
  path.lineTo(last.x, last.y);
  return path;
}

/** One tapered blank from the hand to the tip, as wide as it is seen from the eye. */
function drawRodAway(
  context: CanvasRenderingContext2D,
  eye: Eye,
  placeOn: (share: number) => Space,
  ink: Ink
): void {
  const spine = Array.from({ length: PIECES + 1 }, (_, i) => {
    const at = seen(eye, placeOn(i / PIECES));
    const thick_m = BUTT_M + ((TIP_M - BUTT_M) * i) / PIECES;
    return { ...at, half: Math.max((thick_m * eye.focus) / at.far_m, 1.2) / 2 };
  });
  const side = (sign: 1 | -1) =>
    spine.map(({ x, y, half }, i) => {
      const [before, after] = [spine[Math.max(i - 1, 0)], spine[Math.min(i + 1, PIECES)]];
      const length = Math.hypot(after.x - before.x, after.y - before.y) || 1;
      const across = (sign * half) / length;
      return { x: x - (after.y - before.y) * across, y: y + (after.x - before.x) * across };
    });
  context.fillStyle = ink.ink;
  context.beginPath();
  for (const { x, y } of [...side(1), ...side(-1).reverse()]) context.lineTo(x, y);
  context.closePath();
  context.fill();
}
