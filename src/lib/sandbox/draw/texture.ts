import { metresX, pixelX, pixelY, type View } from '../view';

/**
 * Textures of engraving: water is ruled with broken level lines, closer the deeper; ground is
 * stippled, thicker towards its surface. They say water and ground without colour, and in print.
 */

/** Where a texture's grain lies is fixed by place, so that it does not crawl when it is redrawn. */
export function grain(i: number, j: number): number {
  const mixed = Math.imul(i | 0, 0x9e3779b1) ^ Math.imul(j | 0, 0x85ebca77);
  const stirred = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  return ((stirred ^ (stirred >>> 13)) >>> 0) / 0x100000000;
}

/** Rules the water between two heights of the picture, px. */
export function ruleWater(
  context: CanvasRenderingContext2D,
  from: number,
  to: number,
  width: number,
  style: { colour: string; widest: number; closest: number; alpha: number }
): void {
  context.strokeStyle = style.colour;
  context.lineWidth = 1;
  context.globalAlpha = style.alpha;
  context.beginPath();
  let row = 0;
  for (let y = from + style.widest * 0.7; y < to; row++) {
    const depth = (y - from) / (to - from);
    let x = -60 * grain(row, 0);
    for (let dash = 1; x < width; dash++) {
      const length = 14 + (50 + 150 * depth) * grain(row, dash);
      context.moveTo(x, Math.round(y) + 0.5);
      context.lineTo(x + length, Math.round(y) + 0.5);
      x += length + 10 + (1 - depth) * 90 * grain(row, -dash);
    }
    y += style.widest + (style.closest - style.widest) * depth;
  }
  context.stroke();
  context.globalAlpha = 1;
}

/** Traces the bottom's surface across the picture, and round its foot. */
export function bedPath(
  context: CanvasRenderingContext2D,
  view: View,
  heightAt: (x_m: number) => number
): void {
  context.beginPath();
  context.moveTo(0, view.height);
  for (let px = 0; px <= view.width; px += 1) {
    context.lineTo(px, pixelY(view, heightAt(metresX(view, px))));
  }
  context.lineTo(view.width, view.height);
  context.closePath();
}

/** Stipples the ground down to `thickness` pixels below its surface. */
export function stippleBed(
  context: CanvasRenderingContext2D,
  view: View,
  heightAt: (x_m: number) => number,
  style: { colour: string; cell: number; thickness: number; dot: number }
): void {
  const cell_m = style.cell / view.scale;
  const firstColumn = Math.floor(metresX(view, view.width) / cell_m);
  const lastColumn = Math.ceil(metresX(view, 0) / cell_m);
  context.fillStyle = style.colour;
  for (let column = firstColumn; column <= lastColumn; column++) {
    for (let row = 0; row < style.thickness / style.cell; row++) {
      const share = (row * style.cell) / style.thickness;
      if (grain(column, row) < 0.12 + 0.85 * share) continue;
      const x_m = (column + grain(row + 71, column)) * cell_m;
      const x = pixelX(view, x_m);
      const y =
        pixelY(view, heightAt(x_m)) + (row + 0.25 + 0.75 * grain(column + 37, row)) * style.cell;
      const radius = style.dot * (0.55 + 0.6 * grain(column, row + 53));
      context.beginPath();
      context.arc(x, y, radius, 0, 2 * Math.PI);
      context.fill();
    }
  }
}

/** Adds one mark of a texture to the path; `chance`, 0–1, varies it. */
export type TextureMark = (
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  chance: number
) => void;

/** Strews marks under the ground's surface, one a cell of `along` × `down` px, fewer near the top. */
export function strew(
  context: CanvasRenderingContext2D,
  view: View,
  heightAt: (x_m: number) => number,
  size: { along: number; down: number; depth: number },
  mark: TextureMark
): void {
  const cell_m = size.along / view.scale;
  const first = Math.floor(metresX(view, view.width) / cell_m);
  const last = Math.ceil(metresX(view, 0) / cell_m);
  context.save();
  bedPath(context, view, heightAt);
  context.clip();
  context.beginPath();
  for (let column = first; column <= last; column++) {
    for (let row = 0; row < size.depth / size.down; row++) {
      if (grain(column, row) < 0.3 - 0.05 * row) continue;
      const x_m = (column + grain(row + 71, column)) * cell_m;
      const y =
        pixelY(view, heightAt(x_m)) + (row + 0.6 + 0.5 * grain(column + 37, row)) * size.down;
      mark(context, pixelX(view, x_m), y, grain(column, row + 53));
    }
  }
  context.stroke();
  context.restore();
}

/** Stones are this much darker than the bottom that they lie on, 0–1. */
const STONE_TINT = 0.35;

/** Tints and hatches the inside of stones: rising to the right for a `lean` of 1, falling for −1. */
export function hatchStones(
  context: CanvasRenderingContext2D,
  view: View,
  stones: readonly { x_m: number; width_m: number }[],
  heightAt: (x_m: number) => number,
  { colour, lean }: { colour: string; lean: 1 | -1 }
): void {
  context.save();
  context.strokeStyle = colour;
  context.lineWidth = 1;
  for (const stone of stones) {
    const left = pixelX(view, stone.x_m + stone.width_m / 2);
    const right = pixelX(view, stone.x_m - stone.width_m / 2);
    // Of two that touch one side stands on the other: the lower side is on the ground.
    const sides = [stone.x_m + stone.width_m / 2, stone.x_m - stone.width_m / 2];
    const foot = pixelY(view, Math.min(...sides.map(heightAt)));
    const top = pixelY(view, heightAt(stone.x_m));
    context.save();
    context.beginPath();
    context.rect(left, top - 1, right - left, foot - top + 1);
    context.clip();
    bedPath(context, view, heightAt);
    context.clip();
    context.globalAlpha = STONE_TINT;
    context.fillStyle = colour;
    if (lean === 1) context.fillRect(left, top - 1, right - left, foot - top + 1);
    context.globalAlpha = 1;
    context.beginPath();
    const rise = foot - top;
    for (let x = left - rise; x < right + rise; x += 5) {
      context.moveTo(x, lean === 1 ? foot : top);
      context.lineTo(x + rise, lean === 1 ? top : foot);
    }
    context.stroke();
    context.restore();
  }
  context.restore();
}
