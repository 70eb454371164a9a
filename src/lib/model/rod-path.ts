import { ROD_RATE_HZ, type Move, type RodInput } from './move';

/** Where a rod points: 0° elevation is level, 0° azimuth towards the bait. */
export interface RodAngles {
  elevation_deg: number;
  azimuth_deg: number;
}

/** One movement of the rod. */
export type Single = Exclude<Move, { kind: 'sequence' }>;
/** One that is told by the rod's angles. */
export type Turn = Exclude<Single, { kind: 'tip_path' }>;

/** What share of a turn is done after share `u` of its time. */
export type TurnProfile = (u: number) => number;

/** Minimum-jerk share of a move done after share `u` of its time (Flash & Hogan 1985). */
export function minimumJerk(u: number): number {
  if (u <= 0) return 0;
  if (u >= 1) return 1;
  return u * u * u * (10 + u * (6 * u - 15));
}

interface Piece {
  readonly start_s: number;
  readonly duration_s: number;
  readonly move: Single;
}

/** A move laid out in time. */
export interface Timeline {
  readonly duration_s: number;
  /** What moves the rod, in order: before the first and between two it is held. */
  readonly pieces: readonly Piece[];
  /** Line taken in by the reel until then, m; negative is line given. */
  lineIn_m(t_s: number): number;
}

export function timelineOf(move: Move): Timeline {
  if (move.kind !== 'sequence') {
    const duration_s = durationOf(move);
    const line_in_m = (move.kind === 'rod_input' && move.line_in_m) || 0;
    return {
      duration_s,
      pieces: [{ start_s: 0, duration_s, move }],
      lineIn_m: (t_s) => smoothed(line_in_m, t_s)
    };
  }
  const pieces: Piece[] = [];
  const reels: { start_s: number; line_m: number; duration_s: number }[] = [];
  let end_s = 0;
  for (const step of move.moves) {
    const duration_s = 'duration_s' in step ? step.duration_s : durationOf(step);
    if (step.kind === 'reel') reels.push({ start_s: end_s, ...step });
    else if (step.kind !== 'pause') pieces.push({ start_s: end_s, duration_s, move: step });
    end_s += duration_s;
  }
  return {
    duration_s: end_s,
    pieces,
    lineIn_m: (t_s) =>
      reels.reduce(
        (sum, { start_s, line_m, duration_s }) =>
          sum + line_m * Math.min(Math.max((t_s - start_s) / duration_s, 0), 1),
        0
      )
  };
}

function durationOf(move: Single): number {
  if (move.kind === 'tip_path') return move.t_s[move.t_s.length - 1];
  if (move.kind !== 'rod_input') return move.duration_s;
  return Math.max(lengthOf(move.elevation_deg), lengthOf(move.azimuth_deg)) / ROD_RATE_HZ;
}

function lengthOf(angles: number | number[]): number {
  return typeof angles === 'number' ? 1 : angles.length;
}

/** Which of the pieces has the rod at `t_s`, and how far into it, s. */
export function pieceAt({ pieces }: Timeline, t_s: number): { i: number; into_s: number } {
  // A hand's move is still being recorded: it has no end to stop at.
  if (pieces.length === 1 && pieces[0].move.kind === 'rod_input') return { i: 0, into_s: t_s };
  let i = pieces.length - 1;
  while (i > 0 && pieces[i].start_s > t_s) i--;
  const { start_s, duration_s } = pieces[i];
  return { i, into_s: Math.min(Math.max(t_s - start_s, 0), duration_s) };
}

/** Where the rod points `t_s` seconds into a turn, written to `out`. */
export function anglesIn(
  turn: Turn,
  t_s: number,
  out: RodAngles,
  share: TurnProfile = minimumJerk
) {
  if (turn.kind === 'rod_input') return recordedAngles(turn, t_s, out);
  const { from_deg, to_deg, duration_s } = turn;
  const angle_deg = from_deg + (to_deg - from_deg) * share(t_s / duration_s);
  const isLift = turn.kind === 'lift';
  out.elevation_deg = isLift ? angle_deg : turn.elevation_deg;
  out.azimuth_deg = isLift ? 0 : angle_deg;
}

function recordedAngles({ elevation_deg, azimuth_deg }: RodInput, t_s: number, out: RodAngles) {
  out.elevation_deg = smoothed(elevation_deg, t_s);
  out.azimuth_deg = smoothed(azimuth_deg, t_s);
}

/**
 * Uniform quadratic B-spline with the samples as control points: continuous speed, no overshoot. The
 * tick that ends at sample k uses samples k − 2, k − 1 and k and nothing later, so a live run can go
 * on as the hand moves and comes out bit for bit as the headless run of the recording.
 */
function smoothed(samples: number | number[], t_s: number): number {
  if (typeof samples === 'number') return samples;
  const ticks = t_s * ROD_RATE_HZ;
  const k = Math.max(0, Math.floor(ticks));
  const u = Math.min(Math.max(ticks - k, 0), 1);
  const last = samples.length - 1;
  const a = samples[Math.min(Math.max(k - 1, 0), last)];
  const b = samples[Math.min(k, last)];
  const c = samples[Math.min(k + 1, last)];
  return 0.5 * (1 - u) * (1 - u) * a + (0.5 + u - u * u) * b + 0.5 * u * u * c;
}
