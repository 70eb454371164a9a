import type { FrameSize, LumaFrame, Pixel, PlanePoint } from '$lib/film';
import { seededRandom } from '$lib/model';

/** A made-up clip of a jig before a pool's wall: known motion, camera, lens and water. */
export interface PoolFilm {
  /** Where the jig is at a time, m in the filmed plane: x to the right, z up from the plane's middle. */
  readonly jigAt: (t_s: number) => PlanePoint;
  readonly size?: FrameSize;
  /** From the camera to the plane, m. */
  readonly distance_m?: number;
  /** How far the camera is turned away from square, degrees. */
  readonly yaw_deg?: number;
  /** First radial term of the lens, in focal lengths (OpenCV's k₁): below 0 is a barrel. */
  readonly k1?: number;
  /** Time that a frame gathers light for, s. */
  readonly shutter_s?: number;
  /** Contrast that the water leaves, 1 all of it. */
  readonly contrast?: number;
  /** Standard deviation of the noise, steps of brightness. */
  readonly noise?: number;
  /** How the light changes, steps of brightness a second. */
  readonly drift_per_s?: number;
  /** How far the camera is moved at a time, pixels. */
  readonly shake?: (t_s: number) => Pixel;
  /** When the jig is behind something. */
  readonly isHidden?: (t_s: number) => boolean;
  readonly seed?: number;
}

export const HD: FrameSize = { width_px: 1280, height_px: 720 };
/** Picture widths: 67° across, a phone's main camera. */
const FOCAL_WIDTHS = 0.75;
const JIG_RADIUS_PX = 13;
const SUBFRAMES = 5;
/** Noise is only needed where the tracker looks. */
const NOISY_PX = 70;

/** Standard normal (Box and Muller 1958). */
export function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** Where the camera sees a place of the plane. */
export function pixelOf(film: PoolFilm, { x_m, z_m }: PlanePoint): Pixel {
  const { size = HD, distance_m = 2.5, yaw_deg = 0, k1 = 0 } = film;
  const yaw = (yaw_deg * Math.PI) / 180;
  const ahead = distance_m + x_m * Math.sin(yaw);
  const right = (x_m * Math.cos(yaw)) / ahead;
  const down = -z_m / ahead;
  const bent = 1 + k1 * (right * right + down * down);
  const focal = FOCAL_WIDTHS * size.width_px;
  return {
    x_px: (size.width_px - 1) / 2 + focal * right * bent,
    y_px: (size.height_px - 1) / 2 + focal * down * bent
  };
}

/** The clip's frame at a time. */
export function filmer(film: PoolFilm): (t_s: number) => LumaFrame {
  const { size = HD, seed = 1, contrast = 1 } = film;
  const random = seededRandom(seed);
  const wall = wallOf(size, seed);
  const seen = Uint8ClampedArray.from(wall, (value) => murky(value, contrast));
  const skirt = Float64Array.from({ length: 64 }, () => random() * 120 - 60);
  return (t_s) => {
    const shake = film.shake?.(t_s) ?? { x_px: 0, y_px: 0 };
    const luma = shake.x_px || shake.y_px ? shifted(seen, size, shake) : seen.slice();
    paintJig(luma, film, t_s, shake, skirt);
    throughWater(luma, film, t_s, random);
    return { ...size, luma: new Uint8Array(luma.buffer) };
  };
}

const murky = (value: number, contrast: number) => MURK + contrast * (value - MURK);
/** Brightness of the murk itself. */
const MURK = 120;

/** Blotches of several sizes, as a wall and a bottom have them. */
function wallOf({ width_px, height_px }: FrameSize, seed: number): Float32Array {
  const known = walls.get(`${width_px} × ${height_px}, ${seed}`);
  if (known) return known;
  const random = seededRandom(seed);
  const wall = new Float32Array(width_px * height_px).fill(110);
  for (const [cell, strength] of [
    [64, 22],
    [16, 14],
    [5, 10]
  ]) {
    const columns = Math.ceil(width_px / cell) + 2;
    const knots = Float32Array.from(
      { length: columns * (Math.ceil(height_px / cell) + 2) },
      () => (random() - 0.5) * 2 * strength
    );
    for (let y = 0; y < height_px; y++) {
      const row = Math.floor(y / cell) * columns;
      const v = (y % cell) / cell;
      for (let x = 0; x < width_px; x++) {
        const at = row + Math.floor(x / cell);
        const u = (x % cell) / cell;
        const above = knots[at] * (1 - u) + knots[at + 1] * u;
        const below = knots[at + columns] * (1 - u) + knots[at + columns + 1] * u;
        wall[y * width_px + x] += above * (1 - v) + below * v;
      }
    }
  }
  walls.set(`${width_px} × ${height_px}, ${seed}`, wall);
  return wall;
}
const walls = new Map<string, Float32Array>();

/** By whole pixels. */
function shifted(
  wall: Uint8ClampedArray,
  size: FrameSize,
  by: Pixel
): Uint8ClampedArray<ArrayBuffer> {
  const moved = new Uint8ClampedArray(wall);
  const step = Math.round(by.y_px) * size.width_px + Math.round(by.x_px);
  // What comes in at the edge is the far edge: nothing is followed there.
  if (step >= 0) moved.set(wall.subarray(0, wall.length - step), step);
  else moved.set(wall.subarray(-step));
  return moved;
}

function paintJig(
  frame: Uint8ClampedArray,
  film: PoolFilm,
  t_s: number,
  shake: Pixel,
  skirt: Float64Array
): void {
  if (film.isHidden?.(t_s)) return;
  const { size = HD, shutter_s = 0.002, contrast = 1 } = film;
  const places = Array.from({ length: SUBFRAMES }, (_, i) =>
    pixelOf(film, film.jigAt(t_s + shutter_s * ((i + 0.5) / SUBFRAMES - 0.5)))
  ).map(({ x_px, y_px }) => ({
    x: x_px + Math.round(shake.x_px),
    y: y_px + Math.round(shake.y_px)
  }));
  const reach = JIG_RADIUS_PX + 2;
  const left = Math.floor(Math.min(...places.map(({ x }) => x)) - reach);
  const right = Math.ceil(Math.max(...places.map(({ x }) => x)) + reach);
  const top = Math.floor(Math.min(...places.map(({ y }) => y)) - reach);
  const bottom = Math.ceil(Math.max(...places.map(({ y }) => y)) + reach);
  for (let y = Math.max(top, 0); y <= Math.min(bottom, size.height_px - 1); y++) {
    for (let x = Math.max(left, 0); x <= Math.min(right, size.width_px - 1); x++) {
      const i = y * size.width_px + x;
      const behind = frame[i];
      const seen = ({ x: u, y: v }: { x: number; y: number }) =>
        jig(x - u, y - v, behind, skirt, contrast);
      frame[i] = places.reduce((sum, at) => sum + seen(at), 0) / places.length;
    }
  }
}

/** Brightness of the jig at an offset from its middle: a bright head, a dark skirt in strands. */
function jig(
  right: number,
  down: number,
  behind: number,
  skirt: Float64Array,
  contrast: number
): number {
  const away = Math.hypot(right, down);
  const cover = Math.min(Math.max(JIG_RADIUS_PX - away + 0.5, 0), 1);
  if (cover === 0) return behind;
  const strand = skirt[Math.floor((Math.atan2(down, right) / Math.PI + 1) * 8) % 64];
  const head = 120 * Math.exp(-((right + 5) ** 2 + (down - 2) ** 2) / 18);
  const own = 45 + head + (0.5 + 0.5 * Math.cos(away)) * 0.5 * strand + 0.4 * strand;
  return behind + cover * (murky(own, contrast) - behind);
}

/** Noise and a change of light, where the tracker looks. */
function throughWater(
  frame: Uint8ClampedArray,
  film: PoolFilm,
  t_s: number,
  random: () => number
): void {
  const { size = HD, noise = 0, drift_per_s = 0 } = film;
  if (noise === 0 && drift_per_s === 0) return;
  const { x_px, y_px } = pixelOf(film, film.jigAt(t_s));
  const middle = { x: Math.round(x_px), y: Math.round(y_px) };
  for (let y = middle.y - NOISY_PX; y <= middle.y + NOISY_PX; y++) {
    for (let x = middle.x - NOISY_PX; x <= middle.x + NOISY_PX; x++) {
      if (x < 0 || y < 0 || x >= size.width_px || y >= size.height_px) continue;
      frame[y * size.width_px + x] += drift_per_s * t_s + noise * normal(random);
    }
  }
}
