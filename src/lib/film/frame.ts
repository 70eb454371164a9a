/** A place in a picture, pixels: x to the right, y down, from the centre of the first pixel. */
export interface Pixel {
  readonly x_px: number;
  readonly y_px: number;
}

export interface FrameSize {
  readonly width_px: number;
  readonly height_px: number;
}

/** One picture of a clip, its brightness alone: 0 black to 255 white, row by row. */
export interface LumaFrame extends FrameSize {
  readonly luma: Uint8Array;
}

/** Whether a circle about this place lies in the picture. */
export function holds(size: FrameSize, { x_px, y_px }: Pixel, radius_px: number): boolean {
  const least = Math.min(x_px, y_px, size.width_px - 1 - x_px, size.height_px - 1 - y_px);
  return least >= radius_px;
}

/** Brightness between pixels, bilinear. The place and its neighbours must lie in the picture. */
export function lumaAt({ luma, width_px }: LumaFrame, x_px: number, y_px: number): number {
  const left = Math.floor(x_px);
  const top = Math.floor(y_px);
  const right = x_px - left;
  const down = y_px - top;
  const at = top * width_px + left;
  const above = luma[at] + right * ((luma[at + 1] ?? luma[at]) - luma[at]);
  if (down === 0) return above;
  const next = at + width_px;
  const below = luma[next] + right * ((luma[next + 1] ?? luma[next]) - luma[next]);
  return above + down * (below - above);
}
