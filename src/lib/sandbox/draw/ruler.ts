import type { Ink } from '../palette';
import type { RulerTick } from '../ruler';
import { setFigures } from './type';

/**
 * A ruler along the foot of a picture, as the border of a sea chart is graduated: solid and open
 * pieces in turn, fine ticks above, numbers below. `at` turns a tick's metres into pixels.
 */
export function drawRuler(
  context: CanvasRenderingContext2D,
  ticks: readonly RulerTick[],
  at: (m: number) => number,
  size: { top: number; width: number; height: number; bar: number; font: number },
  ink: Ink
): void {
  const { top, width, height, bar, font } = size;
  context.fillStyle = ink.raised;
  context.fillRect(0, top, width, height);
  context.fillStyle = ink.ink;
  const parts = ticks.filter(({ rank }) => rank > 0);
  for (let i = 1; i < parts.length; i++) {
    if (!parts[i - 1].isSolid) continue;
    const from = at(parts[i - 1].at_m);
    context.fillRect(from, top, at(parts[i].at_m) - from, bar);
  }
  drawTicks(context, ticks, at, top, bar, width, ink);
  setFigures(context, ink, { px: font, weight: 600, align: 'center' });
  const middle = top + bar + 2 + (height - bar) / 2;
  for (const { at_m, label } of ticks) {
    const x = at(at_m);
    const half = context.measureText(label).width / 2;
    if (x > half && x < width - half) context.fillText(label, x, middle);
  }
}

function drawTicks(
  context: CanvasRenderingContext2D,
  ticks: readonly RulerTick[],
  at: (m: number) => number,
  top: number,
  bar: number,
  width: number,
  ink: Ink
): void {
  context.strokeStyle = ink.ink;
  context.lineWidth = 1;
  context.beginPath();
  for (const y of [top, top + bar]) {
    context.moveTo(0, y);
    context.lineTo(width, y);
  }
  for (const { at_m, rank } of ticks) {
    context.moveTo(at(at_m), top + bar);
    context.lineTo(at(at_m), top + bar + (rank === 2 ? 5 : rank === 1 ? 3.5 : 2.5));
  }
  context.stroke();
}
