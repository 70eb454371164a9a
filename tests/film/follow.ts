import {
  frameTimes,
  motionOf,
  outcomeOf,
  SpotTracker,
  type MotionRow,
  type FilmedOutcome,
  type Pixel,
  type ScaleMarks,
  type Sighting
} from '$lib/film';
import { seededRandom } from '$lib/model';
import { filmer, HD, normal, pixelOf, type PoolFilm } from './pool-film';

/** A hand's slip when it marks a corner or the jig, pixels (see HAND_SD_PX). */
const SLIP_PX = 2;

export function stampsAt(rate_Hz: number, seconds: number): number[] {
  return Array.from({ length: Math.round(rate_Hz * seconds) + 1 }, (_, i) => i / rate_Hz);
}

/** A phone that varies its rate: steps of 60, 30 and 20 frames a second in no order. */
export function variableStamps(seconds: number, seed: number): number[] {
  const random = seededRandom(seed);
  const stamps = [0];
  while (stamps[stamps.length - 1] < seconds) {
    stamps.push(
      stamps[stamps.length - 1] + [1 / 60, 1 / 30, 1 / 30, 1 / 20][Math.floor(4 * random())]
    );
  }
  return stamps;
}

/** Of each film, by its frames: painting and searching them is nearly all that takes time here. */
const known = new WeakMap<PoolFilm, Map<string, Sighting[]>>();

/** The jig followed from the first frame on, marked there with a slip of `mark`. */
export function followed(
  film: PoolFilm,
  stamps_s: readonly number[],
  mark: Pixel = { x_px: 0, y_px: 0 }
): Sighting[] {
  const ofFilm = known.get(film) ?? new Map<string, Sighting[]>();
  known.set(film, ofFilm);
  const frames = JSON.stringify([stamps_s, mark]);
  const sightings = ofFilm.get(frames) ?? follow(film, stamps_s, mark);
  ofFilm.set(frames, sightings);
  return sightings;
}

function follow(film: PoolFilm, stamps_s: readonly number[], mark: Pixel): Sighting[] {
  const frameAt = filmer(film);
  const true_px = pixelOf(film, film.jigAt(stamps_s[0]));
  const at = { x_px: true_px.x_px + mark.x_px, y_px: true_px.y_px + mark.y_px };
  const tracker = SpotTracker.begin(frameAt(stamps_s[0]), stamps_s[0], at);
  if (!tracker) throw new Error('nothing to follow in the first frame');
  return [
    { t_s: stamps_s[0], at, state: 'by_hand', sd_px: 0 },
    ...stamps_s.slice(1).map((t_s) => tracker.follow(frameAt(t_s), t_s))
  ];
}

/** Marks of a frame `width_m` × `height_m` about the plane's middle, each with a hand's slip. */
export function fourMarks(
  film: PoolFilm,
  width_m: number,
  height_m: number,
  seed: number
): ScaleMarks {
  const random = seededRandom(seed);
  const [w, h] = [width_m / 2, height_m / 2];
  const corners = [
    [-w, -h],
    [w, -h],
    [w, h],
    [-w, h]
  ];
  const pixels = corners.map(([x_m, z_m]) => slipped(pixelOf(film, { x_m, z_m }), random));
  return { kind: 'four', pixels, width_m, height_m };
}

export function twoMarks(film: PoolFilm, length_m: number, seed: number): ScaleMarks {
  const random = seededRandom(seed);
  const ends = [-length_m / 2, length_m / 2].map((x_m) => pixelOf(film, { x_m, z_m: -0.2 }));
  return { kind: 'two', pixels: ends.map((end) => slipped(end, random)), length_m };
}

function slipped({ x_px, y_px }: Pixel, random: () => number): Pixel {
  return { x_px: x_px + SLIP_PX * normal(random), y_px: y_px + SLIP_PX * normal(random) };
}

export function measured(
  film: PoolFilm,
  stamps_s: readonly number[],
  marks: ScaleMarks,
  bottom?: Sighting[]
): { rows: MotionRow[]; outcome: FilmedOutcome | null } {
  const times = frameTimes(stamps_s);
  const bait = followed(film, times.t_s);
  const size = film.size ?? HD;
  const rows = motionOf({ marks, size, offPlane: 0, times, bait, bottom, angler: 'right' });
  return { rows, outcome: outcomeOf(rows) };
}

/** From rest to rest over `way_m` in `duration_s` after 0.3 s, and up to `height_m` on the way. */
export function hop(from_m: number, way_m: number, duration_s: number, height_m = 0) {
  return (t_s: number) => {
    const u = Math.min(Math.max((t_s - 0.3) / duration_s, 0), 1);
    const share = u * u * u * (10 + u * (6 * u - 15));
    return { x_m: from_m + way_m * share, z_m: -0.2 + height_m * 16 * (u * (1 - u)) ** 2 };
  };
}
