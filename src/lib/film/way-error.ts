import type { FrameSize, Pixel } from './frame';
import type { PlanePoint } from './homography';
import { scaleOf, type Scale, type ScaleMarks } from './scale';
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

/** How well a way from one spot to another is known. */
export type WayErrors = (from: PlacedPixel, to: PlacedPixel) => WaySd;

/** √(marks² + spots² + lens² + plane²), each way, as docs/film.md has it. */
export function wayErrors(how: FilmedHow): WayErrors {
  const scale = scaleOf(how.marks);
  const slipped = slippedScales(how.marks);
  return (from, to) => {
    const way = wayBetween(scale, from.at, to.at);
    const spots = spotSd(scale, from, to);
    const clicks = clickSd(slipped, from.at, to.at, way);
    const lens = lensShare(how.size, from.at, to.at);
    const shares = Math.hypot(lens, how.offPlane, squareness(how, from.at, to.at));
    return {
      along_m: Math.hypot(spots.x_m, clicks.x_m, shares * way.x_m),
      up_m: Math.hypot(spots.z_m, clicks.z_m, shares * way.z_m, BOWING * lens * way.x_m)
    };
  };
}

function wayBetween(scale: Scale, from: Pixel, to: Pixel): PlanePoint {
  const a = scale(from);
  const b = scale(to);
  return { x_m: b.x_m - a.x_m, z_m: b.z_m - a.z_m };
}

/** The scale as it were had one mark slipped by a pixel, one at a time: for a whole clip made once. */
function slippedScales(marks: ScaleMarks): Scale[] {
  return marks.pixels.flatMap((pixel, i) =>
    [moved(pixel, 1, 0), moved(pixel, 0, 1)].map((slipped) => {
      const pixels = marks.pixels.map((other, k) => (k === i ? slipped : other));
      return scaleOf({ ...marks, pixels });
    })
  );
}

function clickSd(slipped: readonly Scale[], from: Pixel, to: Pixel, way: PlanePoint): PlanePoint {
  const ways = slipped.map((scale) => wayBetween(scale, from, to));
  return {
    x_m: HAND_SD_PX * Math.hypot(...ways.map(({ x_m }) => x_m - way.x_m)),
    z_m: HAND_SD_PX * Math.hypot(...ways.map(({ z_m }) => z_m - way.z_m))
  };
}

function spotSd(scale: Scale, from: PlacedPixel, to: PlacedPixel): PlanePoint {
  const ends = [from, to].flatMap(({ at, sd_px }) =>
    [moved(at, 1, 0), moved(at, 0, 1)].map((slipped) => {
      const { x_m, z_m } = wayBetween(scale, at, slipped);
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

/** What a lens makes of a way between these places, as a share of it (one deviation). */
export function lensShare(size: FrameSize, ...places: readonly Pixel[]): number {
  return areInMiddle(size, ...places) ? LENS_MIDDLE : LENS_OUTSIDE;
}

function areInMiddle({ width_px, height_px }: FrameSize, ...pixels: readonly Pixel[]): boolean {
  return pixels.every(
    ({ x_px, y_px }) =>
      Math.abs(x_px / width_px - 0.5) <= 0.25 && Math.abs(y_px / height_px - 0.5) <= 0.25
  );
}

function moved({ x_px, y_px }: Pixel, right_px: number, down_px: number): Pixel {
  return { x_px: x_px + right_px, y_px: y_px + down_px };
}
