import { MonotoneCubic } from './monotone-cubic';
import { ROD_RATE_HZ, type Move, type RodInput, type SequenceStep } from './move';
import { ScenarioError, type Setup } from './scenario';
import { degToRad } from './units';

/** A point of the plane: x metres from the pivot towards the bait's side, z metres above the water. */
export interface Point {
  x: number;
  z: number;
}

/** Where the (unbent) rod's tip is, `t` seconds after the start. Constant after `duration_s`. */
export interface TipPath {
  readonly duration_s: number;
  at(t_s: number, out: Point): void;
  /** Line taken in by the reel until then, m; negative is line given. */
  lineIn_m(t_s: number): number;
}

const NO_REEL = () => 0;

/** How far apart two moves of a sequence may leave and take up the tip, m. */
const JOINT_TOLERANCE_M = 1e-3;

export type RodGeometry = Pick<Setup, 'rod' | 'start'>;

/**
 * Tip of a stiff rod. A lift turns it in the plane of rod and bait; a low rod turned sideways counts
 * by how far the tip's horizontal distance to the bait changes, so the plane is laid through both.
 */
export function tipOf(setup: RodGeometry, elevation_deg: number, azimuth_deg: number, out: Point) {
  const { length_m, pivot_height_m } = setup.rod;
  const baitX = setup.start.bait_x_m;
  const reach = length_m * Math.cos(degToRad(elevation_deg));
  out.z = pivot_height_m + length_m * Math.sin(degToRad(elevation_deg));
  if (azimuth_deg === 0) {
    out.x = reach;
    return;
  }
  const along = baitX - reach * Math.cos(degToRad(azimuth_deg));
  const across = reach * Math.sin(degToRad(azimuth_deg));
  out.x = baitX - Math.sign(baitX) * Math.hypot(along, across);
}

/** Minimum-jerk share of a move done after share `u` of its time (Flash & Hogan 1985). */
export function minimumJerk(u: number): number {
  if (u <= 0) return 0;
  if (u >= 1) return 1;
  return u * u * u * (10 + u * (6 * u - 15));
}

/** Throws ScenarioError when a sequence's moves do not join. */
export function tipPathOf(setup: RodGeometry & Pick<Setup, 'drift_m_s'>, move: Move): TipPath {
  const path = move.kind === 'sequence' ? sequencePath(setup, move.moves) : singlePath(setup, move);
  const drift = setup.drift_m_s * Math.sign(setup.start.bait_x_m);
  if (drift === 0) return path;
  return {
    ...path,
    at: (t, out) => {
      path.at(t, out);
      out.x += drift * t;
    }
  };
}

function singlePath(setup: RodGeometry, move: Exclude<Move, { kind: 'sequence' }>): TipPath {
  switch (move.kind) {
    case 'lift':
      return turnPath(move.duration_s, move.from_deg, move.to_deg, (deg, out) =>
        tipOf(setup, deg, 0, out)
      );
    case 'sweep':
      return turnPath(move.duration_s, move.from_deg, move.to_deg, (deg, out) =>
        tipOf(setup, move.elevation_deg, deg, out)
      );
    case 'tip_path': {
      const x = new MonotoneCubic(move.t_s, move.x_m);
      const z = new MonotoneCubic(move.t_s, move.z_m);
      return {
        duration_s: move.t_s[move.t_s.length - 1],
        lineIn_m: NO_REEL,
        at: (t, out) => {
          out.x = x.at(t);
          out.z = z.at(t);
        }
      };
    }
    case 'rod_input':
      return recordedPath(setup, move);
  }
}

function turnPath(
  duration_s: number,
  from_deg: number,
  to_deg: number,
  place: (deg: number, out: Point) => void
): TipPath {
  return {
    duration_s,
    lineIn_m: NO_REEL,
    at: (t, out) => place(from_deg + (to_deg - from_deg) * minimumJerk(t / duration_s), out)
  };
}

function recordedPath(setup: RodGeometry, move: RodInput): TipPath {
  const samples = Math.max(lengthOf(move.elevation_deg), lengthOf(move.azimuth_deg));
  return {
    duration_s: samples / ROD_RATE_HZ,
    lineIn_m: (t) => smoothed(move.line_in_m ?? 0, t),
    at: (t, out) =>
      tipOf(setup, smoothed(move.elevation_deg, t), smoothed(move.azimuth_deg, t), out)
  };
}

function lengthOf(angles: number | number[]): number {
  return typeof angles === 'number' ? 1 : angles.length;
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

interface Piece {
  readonly start_s: number;
  readonly path: TipPath;
}

function sequencePath(setup: RodGeometry, moves: readonly SequenceStep[]): TipPath {
  const pieces: Piece[] = [];
  const reels: { start_s: number; line_m: number; duration_s: number }[] = [];
  let end_s = 0;
  moves.forEach((move, i) => {
    if (move.kind === 'reel') reels.push({ start_s: end_s, ...move });
    if (move.kind !== 'pause' && move.kind !== 'reel') {
      const path = singlePath(setup, move);
      checkJoint(pieces[pieces.length - 1]?.path, path, move, i);
      pieces.push({ start_s: end_s, path });
    }
    end_s += move.kind === 'tip_path' ? move.t_s[move.t_s.length - 1] : move.duration_s;
  });
  if (pieces.length === 0) {
    throw new ScenarioError('move.moves', moves, 'needs at least one move of the rod');
  }
  return {
    duration_s: end_s,
    at: (t, out) => {
      let i = pieces.length - 1;
      while (i > 0 && pieces[i].start_s > t) i--;
      const local = Math.min(Math.max(t - pieces[i].start_s, 0), pieces[i].path.duration_s);
      pieces[i].path.at(local, out);
    },
    lineIn_m: (t) =>
      reels.reduce((sum, { start_s, line_m, duration_s }) => {
        const share = Math.min(Math.max((t - start_s) / duration_s, 0), 1);
        return sum + line_m * share;
      }, 0)
  };
}

function checkJoint(before: TipPath | undefined, next: TipPath, move: SequenceStep, i: number) {
  if (!before) return;
  const from: Point = { x: 0, z: 0 };
  const to: Point = { x: 0, z: 0 };
  before.at(before.duration_s, from);
  next.at(0, to);
  const gap = Math.hypot(to.x - from.x, to.z - from.z);
  if (gap <= JOINT_TOLERANCE_M) return;
  throw new ScenarioError(
    `move.moves.${i}`,
    move,
    `must begin where the move before it ended (the tip would jump ${gap.toFixed(3)} m)`
  );
}
