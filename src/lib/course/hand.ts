import {
  anglesIn,
  minimumJerk,
  pieceAt,
  ROD_RATE_HZ,
  timelineOf,
  type Move,
  type RodAngles,
  type RodInput,
  type Timeline
} from '../model';

/** How a hand makes a move that it means to make exactly. */
export interface HandError {
  /** Turned so much too far, as a share: 0.1 is a tenth. */
  reach: number;
  /** So much too quick, as a share. */
  pace: number;
  /** Turns at an even rate from the first instant, as a held key does, and not smoothly. */
  isEven: boolean;
}

/** A recorded move of which every tick has its angles. */
export type HandInput = RodInput & Record<'elevation_deg' | 'azimuth_deg', number[]>;

/** The move as such a hand records it. Throws RangeError for moves that are not turns of the rod. */
export function byHand(move: Move, start: RodAngles, error: HandError): HandInput {
  const timeline = timelineOf(move);
  const share = error.isEven ? even : minimumJerk;
  const length = Math.round((timeline.duration_s / (1 + error.pace)) * ROD_RATE_HZ);
  const times_s = Array.from(
    { length: length + 1 },
    (_, i) => (i / ROD_RATE_HZ) * (1 + error.pace)
  );
  const angles = times_s.map((t_s) => anglesAt(timeline, t_s, start, share));
  const off = (angle: number, from: number) => from + (angle - from) * (1 + error.reach);
  // A crank turns evenly, and takes in what was meant however quickly it is turned.
  const lineIn_m = times_s.map((t_s) => timeline.lineIn_m(t_s));
  return {
    kind: 'rod_input',
    rate_Hz: ROD_RATE_HZ,
    elevation_deg: angles.map((at) => off(at.elevation_deg, start.elevation_deg)),
    azimuth_deg: angles.map((at) => off(at.azimuth_deg, start.azimuth_deg)),
    ...(lineIn_m.some((line_m) => line_m !== 0) && { line_in_m: lineIn_m })
  };
}

function even(u: number): number {
  return Math.min(1, Math.max(0, u));
}

/** Before its first turn the hand holds the rod where it was. */
function anglesAt(
  timeline: Timeline,
  t_s: number,
  start: RodAngles,
  share: (u: number) => number
): RodAngles {
  const [first] = timeline.pieces;
  if (!first || first.start_s > t_s) return start;
  const { i, into_s } = pieceAt(timeline, t_s);
  const { move } = timeline.pieces[i];
  if (move.kind === 'tip_path' || move.kind === 'rod_input')
    throw new RangeError(`a hand turns the rod: it cannot make a ${move.kind}`);
  const angles = { ...start };
  anglesIn(move, into_s, angles, share);
  return angles;
}
