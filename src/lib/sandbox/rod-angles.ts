import {
  degToRad,
  minimumJerk,
  ROD_RATE_HZ,
  tipPathOf,
  type Move,
  type Point,
  type RodAngles,
  type SequenceStep,
  type Setup
} from '$lib/model';

/** Which way a rod is turned: up the clock, or low and sideways. */
export type Plane = 'lift' | 'sweep';

/** The angle of the two that a hand moves in this plane. */
export function movedAngle(plane: Plane): keyof RodAngles {
  return plane === 'lift' ? 'elevation_deg' : 'azimuth_deg';
}

/** The plane that a move is made in: a hand's is told by the angle that was recorded. */
export function planeOf(move: Move): Plane {
  if (move.kind === 'rod_input') return Array.isArray(move.azimuth_deg) ? 'sweep' : 'lift';
  const steps: readonly { kind: string }[] = move.kind === 'sequence' ? move.moves : [move];
  return steps.some(({ kind }) => kind === 'sweep') ? 'sweep' : 'lift';
}

/** How far a hand can turn the rod. Below level a lift's tip nears the water, behind upright it ends. */
export const ROD_LIMITS = {
  lift: { least_deg: -15, most_deg: 105 },
  sweep: { least_deg: -100, most_deg: 100 }
} as const;

type SingleMove = Exclude<Move, { kind: 'sequence' }>;

/** Where the rod points `t_s` seconds into a move, for the pictures: the model takes its tip only. */
export function rodAnglesAt(setup: Setup, move: Move, t_s: number): RodAngles {
  if (move.kind !== 'sequence') return anglesIn(setup, move, t_s);
  let begun_s = 0;
  let angles: RodAngles | null = null;
  for (const step of move.moves) {
    const ends_s = begun_s + durationOf(setup, step);
    if (step.kind !== 'pause' && step.kind !== 'reel') {
      if (angles && t_s < begun_s) break;
      angles = anglesIn(setup, step, Math.min(t_s, ends_s) - begun_s);
    }
    begun_s = ends_s;
  }
  return angles ?? { elevation_deg: 0, azimuth_deg: 0 };
}

function durationOf(setup: Setup, step: SequenceStep): number {
  return 'duration_s' in step ? step.duration_s : tipPathOf(setup, step).duration_s;
}

function anglesIn(setup: Setup, move: SingleMove, t_s: number): RodAngles {
  switch (move.kind) {
    case 'lift':
      return { elevation_deg: turned(move, t_s), azimuth_deg: 0 };
    case 'sweep':
      return { elevation_deg: move.elevation_deg, azimuth_deg: turned(move, t_s) };
    case 'rod_input':
      return {
        elevation_deg: sampled(move.elevation_deg, t_s),
        azimuth_deg: sampled(move.azimuth_deg, t_s)
      };
    case 'tip_path':
      return towardsTip(setup, move, t_s);
  }
}

function turned(
  { from_deg, to_deg, duration_s }: { from_deg: number; to_deg: number; duration_s: number },
  t_s: number
): number {
  return from_deg + (to_deg - from_deg) * minimumJerk(t_s / duration_s);
}

function sampled(angles: number | number[], t_s: number): number {
  if (typeof angles === 'number') return angles;
  const at = Math.min(Math.max(t_s * ROD_RATE_HZ, 0), angles.length - 1);
  const before = Math.floor(at);
  const after = Math.min(before + 1, angles.length - 1);
  return angles[before] + (at - before) * (angles[after] - angles[before]);
}

function towardsTip(setup: Setup, move: SingleMove, t_s: number): RodAngles {
  const tip: Point = { x: 0, z: 0 };
  tipPathOf(setup, move).at(t_s, tip);
  const up = Math.atan2(tip.z - setup.rod.pivot_height_m, tip.x);
  return { elevation_deg: up / degToRad(1), azimuth_deg: 0 };
}
