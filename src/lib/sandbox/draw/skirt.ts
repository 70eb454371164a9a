import type { Ink } from '../palette';
import { mixed, type Between } from '../scenery/scenery';
import { LINKS, STRANDS, TRAILER } from '../scenery/strands';

/** However small the scale, the skirt can be seen: least length of its strands, px. */
const LEAST_SKIRT = 20;

/** Pixels a metre for skirt and hook. */
export function skirtScale(scale: number): number {
  return Math.max(scale, LEAST_SKIRT / STRANDS[0].length_m);
}

/** Skirt and trailer of a jig whose lowest point is at (x, y). */
export function drawSkirt(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  scale: number,
  strands: Between,
  ink: Ink
): void {
  const size = skirtScale(scale);
  const trailer = Math.min(Math.max(STRANDS[TRAILER].thickness_m * size, 1.25), 3);
  context.strokeStyle = ink.bait;
  for (const [first, last, width] of [
    [TRAILER, STRANDS.length, trailer],
    [0, TRAILER, 1]
  ]) {
    context.lineWidth = width;
    context.beginPath();
    for (let i = first; i < last; i++) strandPath(context, x, y, size, strands, i);
    context.stroke();
  }
}

function strandPath(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  size: number,
  strands: Between,
  strand: number
): void {
  const node = (j: number) => {
    const at = 2 * (strand * (LINKS + 1) + j);
    return { x: x - size * mixed(strands, at), y: y - size * mixed(strands, at + 1) };
  };
  let here = node(0);
  context.moveTo(here.x, here.y);
  for (let j = 1; j < LINKS; j++) {
    const corner = node(j);
    const next = node(j + 1);
    const isLast = j === LINKS - 1;
    here = isLast ? next : { x: (corner.x + next.x) / 2, y: (corner.y + next.y) / 2 };
    context.quadraticCurveTo(corner.x, corner.y, here.x, here.y);
  }
}
