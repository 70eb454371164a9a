import { degToRad, type RodAngles, type Setup } from '$lib/model';
import { movedAngle, ROD_LIMITS, type Plane } from './rod-angles';

/**
 * What is seen from over the shoulder of who stands there and holds the rod. A pinhole camera, with its
 * picture as large and so placed on it that the rod is in it wherever it can be turned, and the line to
 * where it goes into the water. The line of sight is fixed, as the gaze is; only a rod that is swept over
 * to the bait's other side takes it along.
 */

/** The eye over the hand and behind it, m: so far that even a rod laid back overhead is before it. */
const EYE_UP_M = 1;
const EYE_BACK_M = 1.2;
/** Where the gaze rests in a sweep: this far out on the water, m; in a lift it is level. */
const GAZE_M = 5.5;
/** For a sweep the gaze is turned between the line's end and the rod, degrees: both are in sight. */
const ASIDE_DEG = 34;
/** A rod so far past the bait, degrees, is looked at from there as from here before. */
const PAST_DEG = 15;
/**
 * For a lift the eye is so far to the left of the hand, m, as of who holds the rod before the right hip:
 * straight behind it, the rod would hide the line.
 */
const EYE_LEFT_M = 0.35;
/** Nothing nearer to the eye than this is drawn, m. */
const NEAR_M = 0.12;
/** What is in the picture is so far from its rim, px: a ring where the line goes in, and a margin. */
const RIM_PX = 14;
/** The rod is looked for in its way at each so many degrees. */
const LOOK_DEG = 5;

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
  /** Where the line of sight meets the picture, px. */
  readonly x0: number;
  readonly y0: number;
}

/** Which way the eye looks for a rod that is moved in this plane from there. */
export interface Gaze {
  readonly plane: Plane;
  readonly start: RodAngles;
  /** To the rod's own side (1), to the other (−1), or between. */
  readonly turned: number;
}

/** The gaze while the rod is there. */
export function gazeOf(plane: Plane, start: RodAngles, azimuth_deg = start.azimuth_deg): Gaze {
  const past_deg = -sideOf(start) * azimuth_deg;
  const share = Math.min(Math.max(past_deg / PAST_DEG, 0), 1);
  return { plane, start, turned: plane === 'lift' ? 1 : 1 - 2 * share };
}

const sideOf = ({ azimuth_deg }: RodAngles): 1 | -1 => (azimuth_deg < 0 ? -1 : 1);

export function eyeOf(setup: HeldOver, width: number, height: number, gaze: Gaze): Eye {
  const { plane, start, turned } = gaze;
  const isLift = plane === 'lift';
  const up_m = setup.rod.pivot_height_m + EYE_UP_M;
  const aside = isLift ? 0 : degToRad(sideOf(start) * ASIDE_DEG);
  const direction = {
    up_m,
    tilt: isLift ? 0 : Math.atan2(up_m, GAZE_M + EYE_BACK_M),
    left_m: isLift ? EYE_LEFT_M : 0
  };
  const unit = { ...direction, aside, width, height, focus: 1, x0: 0, y0: 0 };
  const held = placesOf(setup, gaze).map((place) => seen(unit, place));
  const [left, right] = endsOf(held.map(({ x }) => x));
  const [top, foot] = endsOf(held.map(({ y }) => y));
  const focus = Math.max(
    Math.min((width - 2 * RIM_PX) / (right - left), (height - 2 * RIM_PX) / (foot - top)),
    1
  );
  return {
    ...unit,
    aside: turned * aside,
    focus,
    x0: width / 2 - (turned * focus * (left + right)) / 2,
    y0: height / 2 - (focus * (top + foot)) / 2
  };
}

type HeldOver = Pick<Setup, 'rod' | 'start'>;
const endsOf = (numbers: readonly number[]) =>
  [Math.min(...numbers), Math.max(...numbers)] as const;

/** What is to be in the picture: the hand, the tip all its way, and where the line may go into the water. */
function placesOf(setup: HeldOver, { plane, start }: Gaze): Space[] {
  const { least_deg, most_deg } = ROD_LIMITS[plane];
  const moved = movedAngle(plane);
  const side = plane === 'lift' ? 1 : sideOf(start);
  const from_deg = plane === 'lift' ? least_deg : 0;
  const count = Math.ceil((most_deg - from_deg) / LOOK_DEG);
  const tips = Array.from({ length: count + 1 }, (_, i) => {
    const deg = side * (from_deg + ((most_deg - from_deg) * i) / count);
    return onRod(setup, { ...start, [moved]: deg }, 1);
  });
  // A slack line hangs from the tip; nearer than the hand there is no water.
  const ends = [0, Math.abs(setup.start.bait_x_m)].map((out_m) => ({ out_m, right_m: 0, up_m: 0 }));
  return [onRod(setup, start, 0), ...tips, ...ends];
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
  return { x: eye.x0 + right * scale, y: eye.y0 - over_m * scale, far_m };
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
