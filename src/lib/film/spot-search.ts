import type { LumaFrame, Pixel } from './frame';
import type { Patch } from './patch';

export interface Found extends Pixel {
  /** Likeness to the patch, 1 at most. */
  readonly score: number;
}

/** First look, every so many pixels: a round patch of radius 15 still shows its peak at two. */
const COARSE_PX = 2;
/** So many of the likeliest places of the first look are looked at closely. */
const CANDIDATES = 3;

/** The place within `reach_px` that is most like the patch, to a fraction of a pixel; null where none can be. */
export function searchSpot(
  frame: LumaFrame,
  patch: Patch,
  about: Pixel,
  reach_px: number
): Found | null {
  const x = Math.round(about.x_px);
  const y = Math.round(about.y_px);
  const coarse = around(frame, patch, { x, y }, reach_px, COARSE_PX)
    .sort((a, b) => b.score - a.score)
    .slice(0, CANDIDATES);
  const fine = coarse.flatMap(({ x_px, y_px }) =>
    around(frame, patch, { x: x_px, y: y_px }, COARSE_PX, 1)
  );
  const best = fine.reduce<Found | null>(
    (most, one) => (most && most.score >= one.score ? most : one),
    null
  );
  return best && between(frame, patch, best);
}

function around(
  frame: LumaFrame,
  patch: Patch,
  { x, y }: { x: number; y: number },
  reach_px: number,
  step_px: number
): Found[] {
  const found: Found[] = [];
  for (let dy = -reach_px; dy <= reach_px; dy += step_px) {
    for (let dx = -reach_px; dx <= reach_px; dx += step_px) {
      const score = patch.score(frame, x + dx, y + dy);
      if (score > -1) found.push({ x_px: x + dx, y_px: y + dy, score });
    }
  }
  return found;
}

/** A parabola through the best whole pixel and its neighbours, each way. */
function between(frame: LumaFrame, patch: Patch, best: Found): Found {
  const at = (dx: number, dy: number) => patch.score(frame, best.x_px + dx, best.y_px + dy);
  return {
    x_px: best.x_px + vertex(at(-1, 0), best.score, at(1, 0)),
    y_px: best.y_px + vertex(at(0, -1), best.score, at(0, 1)),
    score: best.score
  };
}

function vertex(before: number, here: number, after: number): number {
  const bend = before - 2 * here + after;
  // At the picture's edge a neighbour is missing and scores −1.
  if (bend >= 0 || before === -1 || after === -1) return 0;
  return Math.min(Math.max((0.5 * (before - after)) / bend, -0.5), 0.5);
}
