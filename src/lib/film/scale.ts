import type { Pixel } from './frame';
import { homographyOf, throughHomography, type PlanePoint } from './homography';

/** Two marks a known length apart, filmed square on. */
export interface TwoMarks {
  readonly kind: 'two';
  readonly pixels: readonly Pixel[];
  readonly length_m: number;
}

/** The corners of an upright rectangle: bottom left, bottom right, top right, top left. */
export interface FourMarks {
  readonly kind: 'four';
  readonly pixels: readonly Pixel[];
  readonly width_m: number;
  readonly height_m: number;
}

export type ScaleMarks = TwoMarks | FourMarks;

/** From a pixel to a place in the plane that the marks stand in. */
export type Scale = (pixel: Pixel) => PlanePoint;

/** Why marks give no scale. */
export type ScaleFault = 'missing_marks' | 'no_length' | 'too_close' | 'not_a_frame';

/** Closer marks turn a slip of two pixels into more than 5 %. */
const CLOSEST_PX = 40;

export function scaleFaultOf(marks: ScaleMarks): ScaleFault | null {
  const { pixels } = marks;
  if (pixels.length !== (marks.kind === 'two' ? 2 : 4)) return 'missing_marks';
  const lengths = marks.kind === 'two' ? [marks.length_m] : [marks.width_m, marks.height_m];
  if (!lengths.every((length) => length > 0 && Number.isFinite(length))) return 'no_length';
  const isClose = pixels.some((a, i) =>
    pixels.some((b, k) => k > i && Math.hypot(a.x_px - b.x_px, a.y_px - b.y_px) < CLOSEST_PX)
  );
  if (isClose) return 'too_close';
  return marks.kind === 'four' && !isFrame(pixels) ? 'not_a_frame' : null;
}

/** Only for marks without a fault. */
export function scaleOf(marks: ScaleMarks): Scale {
  return marks.kind === 'two' ? twoMarkScale(marks) : fourMarkScale(marks);
}

function fourMarkScale({ pixels, width_m, height_m }: FourMarks): Scale {
  const corners = [
    { x_m: 0, z_m: 0 },
    { x_m: width_m, z_m: 0 },
    { x_m: width_m, z_m: height_m },
    { x_m: 0, z_m: height_m }
  ];
  const homography = homographyOf(pixels, corners);
  if (!homography) throw new RangeError(`four marks on one line: ${JSON.stringify(pixels)}`);
  return (pixel) => throughHomography(homography, pixel);
}

/** The line through the marks is level or upright, whichever it is nearer to. */
function twoMarkScale({ pixels: [a, b], length_m }: TwoMarks): Scale {
  const u = b.x_px - a.x_px;
  const v = b.y_px - a.y_px;
  const m_px = length_m / Math.hypot(u, v);
  const isLevel = Math.abs(u) >= Math.abs(v);
  // The level direction of the picture, x to the right; upright marks are turned by a quarter.
  const sign = isLevel ? Math.sign(u) : -Math.sign(v);
  const [right, down] = isLevel ? [u, v] : [-v, u];
  const cos = (sign * right) / Math.hypot(u, v);
  const sin = (sign * down) / Math.hypot(u, v);
  return ({ x_px, y_px }) => {
    const du = x_px - a.x_px;
    const dv = y_px - a.y_px;
    return { x_m: m_px * (cos * du + sin * dv), z_m: m_px * (sin * du - cos * dv) };
  };
}

/** Corners in their order go round without crossing: every turn is the same way. */
function isFrame(pixels: readonly Pixel[]): boolean {
  return pixels.every((b, i) => {
    const a = pixels[(i + 3) % 4];
    const c = pixels[(i + 1) % 4];
    const cross = (b.x_px - a.x_px) * (c.y_px - b.y_px) - (b.y_px - a.y_px) * (c.x_px - b.x_px);
    // Down is plus in a picture, so bottom left, bottom right, top right turns to minus.
    return cross < 0;
  });
}
