import { degToRad, type RodAngles, type Setup } from '$lib/model';
import type { Plane } from './rod-angles';

/**
 * What a standing angler sees: the eye over the gripping hand and a little behind it, looking at where
 * the line meets the water, for a sweep half-way from there to the rod. A pinhole camera; the line of
 * sight is fixed, as the gaze is.
 */

/** The eye over the hand and behind it, m. */
const EYE_UP_M = 0.5;
const EYE_BACK_M = 0.45;
/** Where the gaze rests: this far out on the water, m. */
const GAZE_M = 5.5;
/** Focal length in heights of the picture: the hand is in it below, the horizon near its top. */
const FOCUS_PER_HEIGHT = 0.62;
/** And in widths: in a picture narrower than its height a swept tip stays in it. */
const FOCUS_PER_WIDTH = 0.69;
/** For a sweep the gaze is turned between the line's end and the rod, degrees: both are in sight. */
const ASIDE_DEG = 34;
/** Nothing nearer to the eye than this is drawn, m. */
export const NEAR_M = 0.12;

/** Metres out towards the bait, to the angler's right, and up from the water. */
export interface Space {
  readonly out_m: number;
  readonly right_m: number;
  readonly up_m: number;
}

export interface Eye {
  readonly width: number;
  readonly height: number;
  readonly up_m: number;
  readonly tilt: number;
  /** How far to the right of the bait it looks, radians. */
  readonly aside: number;
  readonly focus: number;
}

/** Which way the eye looks while a rod is moved in this plane from there, degrees to the right. */
export function gazeOf(plane: Plane, start: RodAngles): number {
  if (plane === 'lift') return 0;
  return start.azimuth_deg < 0 ? -ASIDE_DEG : ASIDE_DEG;
}

export function eyeOf(
  { rod }: Pick<Setup, 'rod'>,
  width: number,
  height: number,
  aside_deg = 0
): Eye {
  const up_m = rod.pivot_height_m + EYE_UP_M;
  return {
    width,
    height,
    up_m,
    tilt: Math.atan2(up_m, GAZE_M + EYE_BACK_M),
    aside: degToRad(aside_deg),
    focus: Math.min(FOCUS_PER_HEIGHT * height, FOCUS_PER_WIDTH * width)
  };
}

/** Where a place is seen, px, and how far before the eye it is, m; behind the eye it is not. */
export function seen(
  eye: Eye,
  { out_m, right_m, up_m }: Space
): { x: number; y: number; far_m: number } {
  const out = out_m + EYE_BACK_M;
  const ahead = out * Math.cos(eye.aside) + right_m * Math.sin(eye.aside);
  const right = right_m * Math.cos(eye.aside) - out * Math.sin(eye.aside);
  const above = up_m - eye.up_m;
  const far_m = ahead * Math.cos(eye.tilt) - above * Math.sin(eye.tilt);
  const over_m = ahead * Math.sin(eye.tilt) + above * Math.cos(eye.tilt);
  const scale = eye.focus / Math.max(far_m, NEAR_M);
  return { x: eye.width / 2 + right * scale, y: eye.height / 2 - over_m * scale, far_m };
}

/** A place on the rod, `share` of the way from the hand to the tip. */
export function onRod(
  { rod }: Pick<Setup, 'rod'>,
  { elevation_deg, azimuth_deg }: { elevation_deg: number; azimuth_deg: number },
  share: number
): Space {
  const reach = share * rod.length_m * Math.cos(degToRad(elevation_deg));
  return {
    out_m: reach * Math.cos(degToRad(azimuth_deg)),
    right_m: reach * Math.sin(degToRad(azimuth_deg)),
    up_m: rod.pivot_height_m + share * rod.length_m * Math.sin(degToRad(elevation_deg))
  };
}
