import { MonotoneCubic } from './monotone-cubic';
import type { Move } from './move';
import { anglesIn, pieceAt, timelineOf, type RodAngles, type Single } from './rod-path';
import { ScenarioError, type Setup } from './scenario';
import { degToRad } from './units';

/** A point of the plane: x metres from the pivot towards the bait's side, z metres above the water. */
export interface Point {
  x: number;
  z: number;
}

/** Where the (unbent) rod and its tip are, `t` seconds after the start. Constant after `duration_s`. */
export interface TipPath {
  readonly duration_s: number;
  at(t_s: number, out: Point): void;
  /** Where the rod points, for the pictures: the model takes its tip only. */
  anglesAt(t_s: number, out: RodAngles): void;
  /** Line taken in by the reel until then, m; negative is line given. */
  lineIn_m(t_s: number): number;
}

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

/** Throws ScenarioError when a sequence's moves do not join. */
export function tipPathOf(setup: RodGeometry & Pick<Setup, 'drift_m_s'>, move: Move): TipPath {
  const timeline = timelineOf(move);
  const parts = timeline.pieces.map((piece) => partOf(setup, piece.move));
  checkJoints(move, timeline.pieces, parts);
  const drift = setup.drift_m_s * Math.sign(setup.start.bait_x_m);
  return {
    duration_s: timeline.duration_s,
    lineIn_m: timeline.lineIn_m,
    at: (t, out) => {
      const { i, into_s } = pieceAt(timeline, t);
      parts[i].at(into_s, out);
      if (drift !== 0) out.x += drift * t;
    },
    anglesAt: (t, out) => {
      const { i, into_s } = pieceAt(timeline, t);
      parts[i].anglesAt(into_s, out);
    }
  };
}

/** One movement, from a boat that stays. */
type Part = Pick<TipPath, 'at' | 'anglesAt'>;

function partOf(setup: RodGeometry, move: Single): Part {
  if (move.kind !== 'tip_path') {
    const angles: RodAngles = { elevation_deg: 0, azimuth_deg: 0 };
    return {
      anglesAt: (t, out) => anglesIn(move, t, out),
      at: (t, out) => {
        anglesIn(move, t, angles);
        tipOf(setup, angles.elevation_deg, angles.azimuth_deg, out);
      }
    };
  }
  const x = new MonotoneCubic(move.t_s, move.x_m);
  const z = new MonotoneCubic(move.t_s, move.z_m);
  return {
    at: (t, out) => {
      out.x = x.at(t);
      out.z = z.at(t);
    },
    anglesAt: (t, out) => {
      const up = Math.atan2(z.at(t) - setup.rod.pivot_height_m, x.at(t));
      out.elevation_deg = up / degToRad(1);
      out.azimuth_deg = 0;
    }
  };
}

function checkJoints(
  move: Move,
  pieces: readonly { readonly duration_s: number; readonly move: Single }[],
  parts: readonly Part[]
): void {
  if (move.kind !== 'sequence') return;
  if (parts.length === 0) {
    throw new ScenarioError('move.moves', move.moves, 'needs at least one move of the rod');
  }
  const from: Point = { x: 0, z: 0 };
  const to: Point = { x: 0, z: 0 };
  for (let i = 1; i < parts.length; i++) {
    parts[i - 1].at(pieces[i - 1].duration_s, from);
    parts[i].at(0, to);
    const gap = Math.hypot(to.x - from.x, to.z - from.z);
    if (gap <= JOINT_TOLERANCE_M) continue;
    const step = pieces[i].move;
    throw new ScenarioError(
      `move.moves.${move.moves.findIndex((one) => one === step)}`,
      step,
      `must begin where the move before it ended (the tip would jump ${gap.toFixed(3)} m)`
    );
  }
}
