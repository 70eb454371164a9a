import { filtered, filterWidth_s, type RodRecording, type RodView } from '$lib/film';
import {
  INCH_M,
  ROD_RATE_HZ,
  simulate,
  type RodAngles,
  type RodInput,
  type Setup
} from '$lib/model';
import { movedAngle, type Plane } from '../rod-angles';

/** Over so many degrees from where the rod was taken up what it was off its start fades out. */
const FADE_DEG = 20;
/** A still rod may move the bait by less than this: half an inch. */
export const STILL_BAIT_M = 0.5 * INCH_M;
/** With more give or take than this there is no grade. */
export const MOST_ROUGH_M = INCH_M;

/**
 * For the eye alone: the rod as the task has it at its start, and as it was held there; farther on as it
 * was filmed. A grade by it would make a foot from where the rod was held two degrees off an inch longer.
 */
export function fromStart(angle_deg: number, heldAt_deg: number, start_deg: number): number {
  const away = Math.abs(angle_deg - heldAt_deg);
  return angle_deg - (heldAt_deg - start_deg) * Math.max(0, 1 - away / FADE_DEG);
}

/**
 * What a hand did, from the film, without its jitter. Marked as made with a real rod. The line is laid to
 * where the rod was really held: the task's own start is met to a few degrees only.
 */
export function filmedInput(
  recording: RodRecording,
  plane: Plane,
  start: RodAngles,
  heldAt_deg: number
): RodInput {
  const smooth = filtered(recording, ROD_RATE_HZ, filterWidth_s(movingTime_s(recording)));
  // Rounded as every hand's recording is.
  const angles = [heldAt_deg, ...smooth].map((angle) => Math.round(angle * 100) / 100);
  const held = { elevation_deg: start.elevation_deg, azimuth_deg: start.azimuth_deg };
  return {
    kind: 'rod_input',
    rate_Hz: ROD_RATE_HZ,
    ...held,
    [movedAngle(plane)]: angles,
    rod: 'real'
  };
}

/** A hand is on its way while it is farther from both ends than this, degrees. */
const UNDER_WAY_DEG = 2;

function movingTime_s({ t_s, angle_deg }: RodRecording): number {
  const [first, last] = [angle_deg[0], angle_deg[angle_deg.length - 1]];
  const moving = t_s.filter(
    (_, i) =>
      Math.abs(angle_deg[i] - first) > UNDER_WAY_DEG &&
      Math.abs(angle_deg[i] - last) > UNDER_WAY_DEG
  );
  return moving.length > 1 ? moving[moving.length - 1] - moving[0] : 0;
}

/** How far the bait goes while the rod is held still, m: it only comes nearer, so jitter adds up. */
export function stillTravel_m(
  setup: Setup,
  recording: RodRecording,
  plane: Plane,
  start: RodAngles
): number {
  const mean = recording.angle_deg.reduce((sum, one) => sum + one, 0) / recording.angle_deg.length;
  const move = filmedInput(recording, plane, start, mean);
  return Math.abs(simulate({ ...setup, move, hold_s: 0 }).travel_m);
}

/** Give or take of a filmed move, m: the view's own, and what a still hand's jitter makes in that time. */
export function roughness_m(
  view: RodView,
  recording: RodRecording,
  reach_m: number,
  still: { readonly travel_m: number; readonly seconds: number }
): number {
  const { t_s, angle_deg } = recording;
  const last = t_s.length - 1;
  const far = angle_deg.reduce(
    (most, one) => (Math.abs(one - angle_deg[0]) > Math.abs(most - angle_deg[0]) ? one : most),
    angle_deg[0]
  );
  const way_m = view.wayOff_m(angle_deg[0], far, reach_m);
  const jitter_m = (still.travel_m * (t_s[last] - t_s[0])) / still.seconds;
  return Math.hypot(way_m, jitter_m);
}
