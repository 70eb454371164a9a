import type { Move } from '../model';
import type { Challenge } from './challenge';

/** Turned further than this, a sweep or a lift no longer takes up line, degrees. */
const FURTHEST_SWEEP_DEG = 120;
const FURTHEST_LIFT_DEG = 100;

type Rod = Pick<Challenge, 'plane' | 'start'>;

/** One smooth turn away from the bait, by `turn_deg`, from where the challenge has the rod. */
export function singleMove({ plane, start }: Rod, turn_deg: number, duration_s: number): Move {
  const { elevation_deg, azimuth_deg } = start;
  if (plane === 'lift') {
    const to_deg = elevation_deg + turn_deg;
    return { kind: 'lift', from_deg: elevation_deg, to_deg, duration_s };
  }
  const to_deg = azimuth_deg + (azimuth_deg < 0 ? -turn_deg : turn_deg);
  return { kind: 'sweep', from_deg: azimuth_deg, to_deg, duration_s, elevation_deg };
}

/** The widest turn that still takes up line, degrees; 0 or less where the rod is there already. */
export function widestTurn({ plane, start }: Rod): number {
  return plane === 'lift'
    ? FURTHEST_LIFT_DEG - start.elevation_deg
    : FURTHEST_SWEEP_DEG - Math.abs(start.azimuth_deg);
}
