import type { Ink } from '../palette';
import type { Tick } from '../ruler';

/**
 * A scale as along the edge of a sea chart: solid and open pieces in turn, with its numbers below.
 * `at` turns a tick's metres into pixels.
 */
export function drawZebra(
  context: CanvasRenderingContext2D,
  ticks: readonly Tick[],
  at: (m: number) => number,
  top: number,
  ink: Ink,
  size: { bar: number; font: number }
): void {
  const whole = ticks.filter(({ rank }) => rank === 2);
  const parts = ticks.filter(({ rank }) => rank > 0);
  context.lineWidth = 1;
  context.strokeStyle = ink.ink;
  for (let i = 1; i < parts.length; i++) {
    const left = at(parts[i - 1].at_m);
    const right = at(parts[i].at_m);
    context.fillStyle = parts[i - 1].isSolid ? ink.ink : ink.raised;
    context.fillRect(left, top, right - left, size.bar);
  }
  if (parts.length > 1) {
    const left = at(parts[0].at_m);
    context.strokeRect(left, top, at(parts[parts.length - 1].at_m) - left, size.bar);
  }
  context.fillStyle = ink.ink;
  context.font = `600 ${size.font}px ${ink.figures}`;
  context.textAlign = 'center';
  context.textBaseline = 'top';
  for (const tick of whole) context.fillText(tick.label, at(tick.at_m), top + size.bar + 3);
}
