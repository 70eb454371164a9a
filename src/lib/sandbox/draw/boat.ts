import type { Ink } from '../palette';
import { pixelX, pixelY, type View } from '../view';

/** Height of the deck above the water, m. */
const DECK_M = 0.34;
/** What a standing angler's hand is above the deck, m. */
const STANDING_M = 0.9;
const HULL_LENGTH_M = 3.4;
/** How far the bow reaches in front of the hand, m. */
const BOW_M = 0.75;

type Points = readonly (readonly [along_m: number, up_m: number])[];

/** The angler's outline from the side: metres from the gripping hand towards the bait, and up. */
const BODY: Points = [
  [-0.18, 0.47],
  [-0.1, 0.33],
  [-0.13, 0.1],
  [-0.12, -0.2],
  [-0.1, -0.48],
  [-0.19, -0.78],
  [-0.06, -0.87],
  [-0.06, -0.9],
  [-0.29, -0.9],
  [-0.26, -0.6],
  [-0.28, -0.16],
  [-0.33, -0.5],
  [-0.44, -0.8],
  [-0.31, -0.87],
  [-0.31, -0.9],
  [-0.55, -0.9],
  [-0.51, -0.62],
  [-0.46, -0.12],
  [-0.39, 0.08],
  [-0.44, 0.32],
  [-0.36, 0.46],
  [-0.27, 0.48]
];
const HEAD = { along: -0.225, up: 0.61, radius: 0.105 } as const;
const SHOULDER = [-0.31, 0.37] as const;
const ELBOW = [-0.31, 0.03] as const;

/** Hull and angler in quiet tones: they give the scale and are not what one looks at. */
export function drawBoat(
  context: CanvasRenderingContext2D,
  view: View,
  hand_m: number,
  ink: Ink
): void {
  const deck_m = Math.min(DECK_M, hand_m * 0.5);
  drawHull(context, view, deck_m, ink);
  drawAngler(context, view, hand_m, deck_m, ink);
}

function drawHull(context: CanvasRenderingContext2D, view: View, deck_m: number, ink: Ink): void {
  const x = (m: number) => pixelX(view, m);
  const y = (m: number) => pixelY(view, m);
  const stern_m = BOW_M - HULL_LENGTH_M;
  context.beginPath();
  context.moveTo(x(BOW_M), y(deck_m + 0.08));
  context.quadraticCurveTo(x(BOW_M - 0.25), y(-0.1), x(BOW_M - 0.75), y(-0.16));
  context.lineTo(x(stern_m), y(-0.14));
  context.lineTo(x(stern_m - 0.06), y(deck_m));
  context.lineTo(x(BOW_M - 0.6), y(deck_m));
  context.quadraticCurveTo(x(BOW_M - 0.25), y(deck_m + 0.01), x(BOW_M), y(deck_m + 0.08));
  context.fillStyle = ink.paper;
  context.fill();
  context.strokeStyle = ink.ink;
  context.lineWidth = 1.25;
  context.stroke();
  context.beginPath();
  context.moveTo(x(BOW_M - 0.07), y(deck_m * 0.85));
  context.quadraticCurveTo(x(BOW_M - 0.4), y(deck_m * 0.7), x(stern_m - 0.04), y(deck_m * 0.68));
  context.lineWidth = 0.75;
  context.stroke();
}

function drawAngler(
  context: CanvasRenderingContext2D,
  view: View,
  hand_m: number,
  deck_m: number,
  ink: Ink
): void {
  // A hand low over the water is a crouching angler: the legs give way, the upper body stays.
  const legs = (hand_m - deck_m) / STANDING_M;
  const at = (along: number, up: number) => ({
    x: pixelX(view, along),
    y: pixelY(view, hand_m + (up < 0 ? up * legs : up))
  });
  context.fillStyle = ink.lead;
  smoothOutline(
    context,
    BODY.map(([along, up]) => at(along, up))
  );
  context.fill();
  drawHead(context, at(HEAD.along, HEAD.up), HEAD.radius * view.scale, ink);
  const arm = [at(...SHOULDER), at(...ELBOW), at(0, 0)];
  // A rim in the colour of the air lifts the arm off the body.
  for (const [colour, width_m] of [
    [ink.raised, 0.12],
    [ink.lead, 0.085]
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = Math.max(width_m * view.scale, 1);
    context.beginPath();
    arm.forEach(({ x, y }) => context.lineTo(x, y));
    context.stroke();
  }
}

/** A head with a cap, looking at the bait. */
function drawHead(
  context: CanvasRenderingContext2D,
  { x, y }: { x: number; y: number },
  radius: number,
  ink: Ink
): void {
  context.fillStyle = ink.lead;
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
  context.strokeStyle = ink.raised;
  context.lineWidth = Math.max(radius * 0.18, 0.5);
  context.beginPath();
  context.moveTo(x - radius * 1.7, y - radius * 0.2);
  context.lineTo(x + radius, y - radius * 0.3);
  context.stroke();
  context.strokeStyle = ink.lead;
  context.lineWidth = Math.max(radius * 0.3, 1);
  context.beginPath();
  context.moveTo(x - radius * 1.75, y - radius * 0.42);
  context.lineTo(x, y - radius * 0.55);
  context.stroke();
}

/** A closed outline through the middles between the points, rounded at each. */
function smoothOutline(
  context: CanvasRenderingContext2D,
  points: readonly { x: number; y: number }[]
): void {
  const middle = (i: number) => {
    const a = points[i % points.length];
    const b = points[(i + 1) % points.length];
    return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  };
  const first = middle(0);
  context.beginPath();
  context.moveTo(first.x, first.y);
  for (let i = 1; i <= points.length; i++) {
    const corner = points[i % points.length];
    const to = middle(i);
    context.quadraticCurveTo(corner.x, corner.y, to.x, to.y);
  }
  context.closePath();
}
