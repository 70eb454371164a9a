import type { Pixel } from './frame';
import { solveLinear } from './linear';

/** A place in the filmed upright plane, m: x to the right, z up. */
export interface PlanePoint {
  readonly x_m: number;
  readonly z_m: number;
}

/** Picture to plane: x = (h₀u + h₁v + h₂) / w, z = (h₃u + h₄v + h₅) / w, w = h₆u + h₇v + 1. */
export type Homography = readonly number[];

/**
 * The one that takes four pixels to four places of the plane (Hartley & Zisserman, "Multiple View
 * Geometry", 2nd ed., eq. 2.5). Null where three of them lie on one line.
 */
export function homographyOf(
  pixels: readonly Pixel[],
  places: readonly PlanePoint[]
): Homography | null {
  const rows: number[][] = [];
  pixels.forEach(({ x_px: u, y_px: v }, i) => {
    const { x_m: x, z_m: z } = places[i];
    rows.push([u, v, 1, 0, 0, 0, -u * x, -v * x, x]);
    rows.push([0, 0, 0, u, v, 1, -u * z, -v * z, z]);
  });
  return solveLinear(rows);
}

export function throughHomography(h: Homography, { x_px: u, y_px: v }: Pixel): PlanePoint {
  const w = h[6] * u + h[7] * v + 1;
  return { x_m: (h[0] * u + h[1] * v + h[2]) / w, z_m: (h[3] * u + h[4] * v + h[5]) / w };
}
