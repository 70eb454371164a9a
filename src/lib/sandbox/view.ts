/**
 * Views: from metres to pixels. Every view is to scale, the same along and up. The boat is on the
 * right, so that a rod pointing at the bait points at nine o'clock as on a real clock face, and
 * travel, which is positive towards the angler, grows to the right as on a ruler.
 */
export interface View {
  readonly width: number;
  readonly height: number;
  /** Pixels a metre. */
  readonly scale: number;
  /** Pixel of x = 0 (the rod hand) and of z = 0 (the surface). */
  readonly x0: number;
  readonly y0: number;
}

/** What a view must hold, m. */
export interface Extent {
  readonly nearest_m: number;
  readonly farthest_m: number;
  readonly lowest_m: number;
  readonly highest_m: number;
}

export function pixelX(view: View, x_m: number): number {
  return view.x0 - x_m * view.scale;
}

export function pixelY(view: View, z_m: number): number {
  return view.y0 - z_m * view.scale;
}

export function metresX(view: View, px: number): number {
  return (view.x0 - px) / view.scale;
}

export function metresZ(view: View, py: number): number {
  return (view.y0 - py) / view.scale;
}

/** A picture with no room for what it must hold is drawn as small as this, and not inside out, px a metre. */
export const LEAST_PX_A_M = 1;

/** The largest view of `extent` in a picture of this size; what is left over goes to the far side. */
export function fitView(extent: Extent, width: number, height: number): View {
  const along = extent.farthest_m - extent.nearest_m;
  const up = extent.highest_m - extent.lowest_m;
  const scale = Math.max(Math.min(width / along, height / up), LEAST_PX_A_M);
  return {
    width,
    height,
    scale,
    x0: width + extent.nearest_m * scale,
    y0: height + extent.lowest_m * scale
  };
}

/** How high a picture of `extent` is at this width, and no higher than `most`, px. */
export function heightFor(extent: Extent, width: number, most: number): number {
  const share = (extent.highest_m - extent.lowest_m) / (extent.farthest_m - extent.nearest_m);
  return Math.round(Math.min(width * share, most));
}
