import type { TapeFault, ViewFault } from '$lib/film';
import { formatLength, type Units } from '$lib/scoring';
import type { Plane } from '../rod-angles';

/** Out over the marks on the floor and back. */
export const SWEEP_MARKS_DEG = [0, 30, 60, 90, 60, 30, 0] as const;

const TAPE_FAULTS: Readonly<Record<TapeFault, string>> = {
  dark: 'Too dark to see the tape. Turn on a light, or put it behind the camera.',
  dull: 'That color is too dull. Use bright tape, unlike anything behind it.'
};
export const tapeFaultText = (fault: TapeFault): string => TAPE_FAULTS[fault];

export function viewFaultText(fault: ViewFault, plane: Plane): string {
  if (fault === 'yaw')
    return 'The camera is at a slant. Turn it square to your side, and go again.';
  if (fault === 'fold')
    return 'The camera can’t tell the angle from there. Put it low, at 45°, on the side you sweep to.';
  return plane === 'lift'
    ? 'That wasn’t level, then straight up. Hold each a second longer, and go again.'
    : 'Those marks don’t fit together. Check them on the floor, and go over them again.';
}

export function poseText(plane: Plane, taken: number): string {
  if (plane === 'lift') {
    return taken === 0 ? 'Hold the rod level and still.' : 'Now straight up, and still.';
  }
  const mark = SWEEP_MARKS_DEG[taken % SWEEP_MARKS_DEG.length];
  return `Tip over the ${mark}° mark, and still.`;
}

export function bringRodText(away_deg: number, plane: Plane): string {
  const by = `${Math.max(1, Math.round(Math.abs(away_deg)))}°`;
  if (plane === 'lift') return away_deg > 0 ? `Raise the rod ${by}.` : `Lower the rod ${by}.`;
  return away_deg > 0 ? `Sweep the rod out ${by}.` : `Bring the rod back ${by}.`;
}

export const ONCE_MORE = 'Not good to the inch yet. Go over the marks once more.';
export const HOLD_STILL = 'Hold it there for two seconds.';
export const READY = 'Ready. Make your move.';
export const OUT_OF_SIGHT = 'The tape is out of sight.';
export const LOST = 'The tape went out of sight during the move. No grade. Go again.';
export const SKIPPED = 'The camera skipped part of the move. No grade. Go again.';

export function unsteadyText(travel_m: number, units: Units): string {
  return `Not steady enough to grade. Held still, it moved the jig ${formatLength(travel_m, units)}. Tuck the butt under your arm.`;
}

export function roughText(rough_m: number, units: Units): string {
  return `No grade: this could be off by ${formatLength(rough_m, units)}. Go over the marks again, with care.`;
}

export function gradedText(rough_m: number, units: Units): string {
  return `Graded from the film, ± ${formatLength(rough_m, units)}.`;
}
