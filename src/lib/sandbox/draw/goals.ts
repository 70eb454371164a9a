import { isOffBottom } from '$lib/model';
import { isHop } from '$lib/scoring';
import { BED_PX, WORDS_PX } from '../close-up';
import type { Ink } from '../palette';
import { shownLifts } from '../shown-lifts';
import type { Backdrop, Moment } from '../stage';
import { metresX, pixelX, pixelY, type View } from '../view';

/** What a challenge asks, drawn where the bait is to do it. */

/** The bottom's shape is followed in steps of so many pixels. */
const STEP_PX = 6;
/** How much the band of heights tints the water, 0–1. */
const TINT = 0.1;
/** Pips that count hops: radius, and distance from one to the next, px. */
const PIP = { radius: 5, apart: 17, edge: 14 } as const;

export function drawGoals(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  ink: Ink
): void {
  if (!stage.target) return;
  const { height_m, travel_m } = stage.target;
  context.save();
  context.strokeStyle = ink.reed;
  context.fillStyle = ink.reed;
  context.lineWidth = 1.5;
  if (height_m) drawHeightBand(context, view, stage, height_m);
  if (travel_m) drawZone(context, view, stage, travel_m);
  context.restore();
}

/** Where a travel of `m` ends, px. */
function placeOf(view: View, { bait }: Backdrop, m: number): number {
  return pixelX(view, bait.x_m - Math.sign(bait.x_m) * m);
}

/** Where the uprights end, px: below the words at the top of the picture, however low it is. */
export function uprightsTop(view: View, { bait }: Pick<Backdrop, 'bait'>): number {
  const floor = pixelY(view, bait.z_m);
  return Math.min(floor - 12, Math.max(WORDS_PX, floor - Math.min(view.height * 0.32, 76)));
}

/** Where the bait is to come to rest, or to stay: uprights with the bottom between them hatched. */
function drawZone(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  [least_m, most_m]: readonly [number, number]
): void {
  const left = placeOf(view, stage, least_m);
  const right = placeOf(view, stage, most_m);
  const floor = pixelY(view, stage.bait.z_m);
  const top = uprightsTop(view, stage);
  context.save();
  context.beginPath();
  context.rect(left, floor, right - left, BED_PX);
  context.clip();
  context.beginPath();
  for (let x = left - BED_PX; x < right; x += 5) {
    context.moveTo(x, floor + BED_PX);
    context.lineTo(x + BED_PX, floor);
  }
  context.stroke();
  context.restore();
  context.beginPath();
  for (const x of [left, right]) {
    context.moveTo(x, floor + BED_PX);
    context.lineTo(x, floor);
    // What lies on the bottom stands before it.
    context.moveTo(x, Math.min(floor, pixelY(view, stage.heightAt(metresX(view, x)))));
    context.lineTo(x, top);
  }
  context.stroke();
}

/** Between these heights over the bottom, whichever way it slopes; from the bottom up: only the upper. */
function drawHeightBand(
  context: CanvasRenderingContext2D,
  view: View,
  { heightAt }: Backdrop,
  [low_m, high_m]: readonly [number, number]
): void {
  const edge = (over_m: number) => {
    const along = new Path2D();
    for (let x = 0; x <= view.width + STEP_PX; x += STEP_PX)
      along.lineTo(x, pixelY(view, heightAt(metresX(view, x)) + over_m));
    return along;
  };
  const band = edge(high_m);
  for (let x = view.width + STEP_PX; x >= 0; x -= STEP_PX)
    band.lineTo(x, pixelY(view, heightAt(metresX(view, x)) + low_m));
  context.globalAlpha = TINT;
  context.fill(band);
  context.globalAlpha = 1;
  context.setLineDash([9, 5]);
  context.stroke(edge(high_m));
  if (low_m > 0) context.stroke(edge(low_m));
  context.setLineDash([]);
}

/** A pip for each hop that is asked, filled as it is done; those too many are crossed. */
export function drawHopCount(
  context: CanvasRenderingContext2D,
  view: View,
  stage: Backdrop,
  moment: Moment,
  ink: Ink
): void {
  const asked = stage.target?.hops;
  if (!asked) return;
  const done = hopsSoFar(moment, stage);
  context.strokeStyle = ink.reed;
  context.fillStyle = ink.reed;
  context.lineWidth = 2;
  const all = Math.max(asked, done);
  for (let i = 0; i < all; i++) {
    const x = view.width - PIP.edge - (all - 1 - i) * PIP.apart;
    const y = PIP.edge + 2;
    context.beginPath();
    context.arc(x, y, PIP.radius, 0, 2 * Math.PI);
    if (i >= asked) {
      context.moveTo(x - PIP.radius, y + PIP.radius);
      context.lineTo(x + PIP.radius, y - PIP.radius);
    } else if (i < done) context.fill();
    context.stroke();
  }
}

/** Flights that are over in the first `ticks` of a run, and high enough to count as hops where a height is asked. */
export function hopsSoFar(
  { trace, ticks }: Pick<Moment, 'trace' | 'ticks'>,
  { heightAt, target }: Pick<Backdrop, 'heightAt' | 'target'>
): number {
  const { lifts } = shownLifts(trace, heightAt);
  const heights = target?.height_m ?? [0, Infinity];
  return lifts.filter(
    ({ to, rise_m }) => to < ticks && isOffBottom(rise_m) && isHop(heights, rise_m)
  ).length;
}
