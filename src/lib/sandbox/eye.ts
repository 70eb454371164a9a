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
/**
 * For a lift the eye is so far to the left of the hand, m, as of who holds the rod before the right hip:
 * straight behind it, the rod would hide the line.
 */
const EYE_LEFT_M = 0.35;
/** Nothing nearer to the eye than this is drawn, m. */
const NEAR_M = 0.12;

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
  /** How far to the left of the hand it is, m. */
  readonly left_m: number;
  readonly focus: number;
}

/** Where the eye is, m to the left of the hand, and which way it looks, degrees to the right. */
export interface Gaze {
  readonly left_m: number;
  readonly aside_deg: number;
}

/** The gaze while a rod is moved in this plane from there. */
export function gazeOf(plane: Plane, start: RodAngles): Gaze {
  if (plane === 'lift') return { left_m: EYE_LEFT_M, aside_deg: 0 };
  return { left_m: 0, aside_deg: start.azimuth_deg < 0 ? -ASIDE_DEG : ASIDE_DEG };
}

export function eyeOf(
  { rod }: Pick<Setup, 'rod'>,
  width: number,
  height: number,
  { left_m, aside_deg }: Gaze = { left_m: 0, aside_deg: 0 }
): Eye {
  const up_m = rod.pivot_height_m + EYE_UP_M;
  return {
    width,
    height,
    up_m,
    tilt: Math.atan2(up_m, GAZE_M + EYE_BACK_M),
    aside: degToRad(aside_deg),
    left_m,
    focus: Math.min(FOCUS_PER_HEIGHT * height, FOCUS_PER_WIDTH * width)
  };
}

/** Where a place is seen, px, and how far before the eye it is, m; behind the eye it is not. */
export function seen(
  eye: Eye,
  { out_m, right_m, up_m }: Space
): { x: number; y: number; far_m: number } {
  const out = out_m + EYE_BACK_M;
  const beside = right_m + eye.left_m;
  const ahead = out * Math.cos(eye.aside) + beside * Math.sin(eye.aside);
  const right = beside * Math.cos(eye.aside) - out * Math.sin(eye.aside);
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
