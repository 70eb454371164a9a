import type { Ink } from '../palette';

/** Length of handle behind the hand, as a share of the rod before it. */
const BUTT_SHARE = 0.16;
/** Where the line's guides sit on the rod, as shares of its length. */
const GUIDES = [0.3, 0.5, 0.66, 0.79, 0.9, 1] as const;

interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * The rod from `hand` to `tip`, px. `unbent` is where the tip of a stiff rod would be: the rod leaves
 * the hand in that direction, and a loaded tip bends away from it.
 */
export function drawRod(
  context: CanvasRenderingContext2D,
  hand: Spot,
  unbent: Spot,
  tip: Spot,
  thickness: number,
  ink: Ink
): void {
  const knee = { x: (hand.x + unbent.x) / 2, y: (hand.y + unbent.y) / 2 };
  const at = (share: number): Spot => ({
    x: curve(hand.x, knee.x, tip.x, share),
    y: curve(hand.y, knee.y, tip.y, share)
  });
  context.strokeStyle = ink.ink;
  const pieces = 8;
  for (let i = 0; i < pieces; i++) {
    const from = at(i / pieces);
    const to = at((i + 1) / pieces);
    context.lineWidth = thickness * (1 - (0.72 * i) / (pieces - 1));
    context.beginPath();
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
    context.stroke();
  }
  drawButt(context, hand, unbent, thickness);
  if (thickness > 2.5) drawGuides(context, at, ink);
}

function drawButt(
  context: CanvasRenderingContext2D,
  hand: Spot,
  unbent: Spot,
  thickness: number
): void {
  context.lineWidth = thickness * 1.5;
  context.beginPath();
  context.moveTo(hand.x + 0.06 * (unbent.x - hand.x), hand.y + 0.06 * (unbent.y - hand.y));
  context.lineTo(
    hand.x - BUTT_SHARE * (unbent.x - hand.x),
    hand.y - BUTT_SHARE * (unbent.y - hand.y)
  );
  context.stroke();
}

function drawGuides(
  context: CanvasRenderingContext2D,
  at: (share: number) => Spot,
  ink: Ink
): void {
  context.lineWidth = 1;
  context.fillStyle = ink.raised;
  for (const share of GUIDES) {
    const { x, y } = at(share);
    context.beginPath();
    context.arc(x, y, 2.6 - 1.1 * share, 0, 2 * Math.PI);
    context.fill();
    context.stroke();
  }
}

function curve(a: number, b: number, c: number, share: number): number {
  const rest = 1 - share;
  return rest * rest * a + 2 * rest * share * b + share * share * c;
}
