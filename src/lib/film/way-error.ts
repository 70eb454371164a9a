import type { FrameSize, Pixel } from './frame';
import type { PlanePoint } from './homography';
import { scaleOf, type ScaleMarks } from './scale';
import { HAND_SD_PX } from './tracker';

/** How a clip was filmed, as far as it bears on what a length is worth. */
export interface FilmedHow {
  readonly marks: ScaleMarks;
  readonly size: FrameSize;
  /** How far the spot may have been off the plane of the marks, as a share of its distance. */
  readonly offPlane: number;
}

/** A spot in the picture and how well it is placed there. */
export interface PlacedPixel {
  readonly at: Pixel;
  readonly sd_px: number;
}

/**
 * A phone's lens, taken out by nothing here, as a share of a length: with k₁ = −0.1 a length in the
 * middle half of the picture is off by 2 %, one that reaches outside by 4 %.
 */
const LENS_MIDDLE = 0.02;
const LENS_OUTSIDE = 0.04;
/** A lens bends a level way: so much of its length counts as height, times the share above. */
const BOWING = 0.5;
/** Two marks do not show whether the camera stood square: so far it may be off, degrees (sd). */
const SQUARE_SD_DEG = 4;
/** Focal length of a phone's main camera in picture widths (from memory: 65 to 70° across). */
const FOCAL_WIDTHS = 0.75;

/** Standard deviation of a way from one spot to another, level and upright, m. */
export interface WaySd {
  readonly along_m: number;
  readonly up_m: number;
}

/** √(marks² + spots² + lens² + plane²), each way, as docs/film.md derives it. */
export function waySd(how: FilmedHow, from: PlacedPixel, to: PlacedPixel): WaySd {
  const way = wayBetween(how.marks, from.at, to.at);
  const spots = spotSd(how.marks, from, to);
  const clicks = clickSd(how.marks, from.at, to.at, way);
  const lens = areInMiddle(how.size, from.at, to.at) ? LENS_MIDDLE : LENS_OUTSIDE;
  const shares = Math.hypot(lens, how.offPlane, squareness(how, from.at, to.at));
  return {
    along_m: Math.hypot(spots.x_m, clicks.x_m, shares * way.x_m),
    up_m: Math.hypot(spots.z_m, clicks.z_m, shares * way.z_m, BOWING * lens * way.x_m)
  };
}

function wayBetween(marks: ScaleMarks, from: Pixel, to: Pixel): PlanePoint {
  const scale = scaleOf(marks);
  const a = scale(from);
  const b = scale(to);
  return { x_m: b.x_m - a.x_m, z_m: b.z_m - a.z_m };
}

/** What a slip of each mark does, one at a time. */
function clickSd(marks: ScaleMarks, from: Pixel, to: Pixel, way: PlanePoint): PlanePoint {
  const slips = marks.pixels.flatMap((pixel, i) =>
    [moved(pixel, 1, 0), moved(pixel, 0, 1)].map((slipped) => {
      const pixels = marks.pixels.map((other, k) => (k === i ? slipped : other));
      const other = wayBetween({ ...marks, pixels }, from, to);
      return { x_m: other.x_m - way.x_m, z_m: other.z_m - way.z_m };
    })
  );
  return {
    x_m: HAND_SD_PX * Math.hypot(...slips.map(({ x_m }) => x_m)),
    z_m: HAND_SD_PX * Math.hypot(...slips.map(({ z_m }) => z_m))
  };
}

function spotSd(marks: ScaleMarks, from: PlacedPixel, to: PlacedPixel): PlanePoint {
  const ends = [from, to].flatMap(({ at, sd_px }) =>
    [moved(at, 1, 0), moved(at, 0, 1)].map((slipped) => {
      const { x_m, z_m } = wayBetween(marks, at, slipped);
      return { x_m: sd_px * x_m, z_m: sd_px * z_m };
    })
  );
  return {
    x_m: Math.hypot(...ends.map(({ x_m }) => x_m)),
    z_m: Math.hypot(...ends.map(({ z_m }) => z_m))
  };
}

/** A camera turned by ψ sees a length scaled by 1 + (u / f) tan ψ, so marks elsewhere mislead. */
function squareness({ marks, size }: FilmedHow, from: Pixel, to: Pixel): number {
  if (marks.kind === 'four') return 0;
  const [a, b] = marks.pixels;
  const away_px = Math.hypot(
    (from.x_px + to.x_px - a.x_px - b.x_px) / 2,
    (from.y_px + to.y_px - a.y_px - b.y_px) / 2
  );
  const focal_px = FOCAL_WIDTHS * Math.max(size.width_px, size.height_px);
  return (away_px / focal_px) * Math.tan((SQUARE_SD_DEG * Math.PI) / 180);
}

function areInMiddle({ width_px, height_px }: FrameSize, ...pixels: Pixel[]): boolean {
  return pixels.every(
    ({ x_px, y_px }) =>
      Math.abs(x_px / width_px - 0.5) <= 0.25 && Math.abs(y_px / height_px - 0.5) <= 0.25
  );
}

function moved({ x_px, y_px }: Pixel, right_px: number, down_px: number): Pixel {
  return { x_px: x_px + right_px, y_px: y_px + down_px };
}
