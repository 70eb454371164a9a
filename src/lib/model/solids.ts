import Body from 'matter-js/src/body/Body.js';
import Query, { type CollisionBody, type Vector } from 'matter-js/src/collision/Query.js';
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

/** Sides of the polygon that stands for a round bait: its radius is right to 1 %. */
const ROUND_SIDES = 24;

/** Where a round body overlaps a solid: which one, the unit normal out of it, and how deep, m. */
export interface Overlap {
  readonly solid: number;
  readonly nx: number;
  readonly nz: number;
  readonly depth_m: number;
}

/** Solids that nothing moves, and a round body that is held against them. */
export class Solids {
  private readonly bodies: CollisionBody[];
  private readonly numberOf = new Map<number, number>();
  private readonly round: CollisionBody;

  /** @param outlines of the solids, in metres, by their number */
  constructor(outlines: readonly (readonly Point[])[], radius_m: number) {
    this.bodies = outlines.map((outline, i) => {
      const body = staticBody(outline);
      this.numberOf.set(body.id, i);
      return body;
    });
    this.round = Body.create({ position: { x: 0, y: 0 }, vertices: circle(radius_m * MM) });
  }

  /** What the round body overlaps with its middle at (x, z), m. */
  overlapsAt(x_m: number, z_m: number): Overlap[] {
    Body.setPosition(this.round, { x: x_m * MM, y: z_m * MM });
    return Query.collides(this.round, this.bodies).map(({ bodyA, bodyB, normal, depth }) => {
      const { id, position } = bodyA === this.round ? bodyB : bodyA;
      const away = normal.x * (x_m * MM - position.x) + normal.y * (z_m * MM - position.y);
      const sign = away >= 0 ? 1 : -1;
      const solid = this.numberOf.get(id) ?? NaN;
      return { solid, nx: sign * normal.x, nz: sign * normal.y, depth_m: depth / MM };
    });
  }
}

/** Polygon drawn around a circle, so that its flat sides are where the circle is. */
function circle(circleRadius: number): Vector[] {
  const radius = circleRadius / Math.cos(Math.PI / ROUND_SIDES);
  return Array.from({ length: ROUND_SIDES }, (_, i) => {
    const angle = (-2 * Math.PI * (i + 0.5)) / ROUND_SIDES;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}
