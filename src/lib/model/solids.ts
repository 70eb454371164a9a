import Body from 'matter-js/src/body/Body.js';
import Vertices from 'matter-js/src/geometry/Vertices.js';
import type { Point } from './tip-path';

/** What bottom, stones and loose scenery have of the rigid-body library in common. */

/**
 * The collision library's thresholds are meant for pixels, so its world is laid out in millimetres.
 */
export const MM = 1000;

/** A body that nothing moves. @param outline in metres */
export function staticBody(outline: readonly Point[]): Body {
  const vertices = outline.map(({ x, z }) => ({ x: x * MM, y: z * MM }));
  return Body.create({ isStatic: true, position: Vertices.centre(vertices), vertices });
}
