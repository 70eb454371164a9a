import {
  minimumJerk,
  ROD_RATE_HZ,
  type Move,
  type RodAngles,
  type RodInput,
  type SequenceStep
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

type Turn = Extract<Move, { kind: 'lift' | 'sweep' }>;
type Share = (u: number) => number;

/** The move as such a hand records it. Throws RangeError for moves that are not turns of the rod. */
export function byHand(move: Move, start: RodAngles, error: HandError): RodInput {
  const share = error.isEven ? even : minimumJerk;
  const length = Math.round((durationOf(move) / (1 + error.pace)) * ROD_RATE_HZ);
  const angles = Array.from({ length: length + 1 }, (_, i) =>
    anglesAt(move, (i / ROD_RATE_HZ) * (1 + error.pace), start, share)
  );
  const off = (angle: number, from: number) => from + (angle - from) * (1 + error.reach);
  const lineIn_m = angles.map((_, i) => lineInAt(move, (i / ROD_RATE_HZ) * (1 + error.pace)));
  return {
    kind: 'rod_input',
    rate_Hz: ROD_RATE_HZ,
    elevation_deg: angles.map((at) => off(at.elevation_deg, start.elevation_deg)),
    azimuth_deg: angles.map((at) => off(at.azimuth_deg, start.azimuth_deg)),
    ...(lineIn_m.some((line_m) => line_m !== 0) && { line_in_m: lineIn_m })
  };
}

/** A crank turns evenly, and takes in what was meant however quickly it is turned. */
function lineInAt(move: Move, t_s: number): number {
  if (move.kind !== 'sequence') return 0;
  let begin_s = 0;
  let line_m = 0;
  for (const step of move.moves) {
    if (step.kind === 'reel') line_m += step.line_m * even((t_s - begin_s) / step.duration_s);
    begin_s += holdsRod(step) ? step.duration_s : turnOf(step).duration_s;
  }
  return line_m;
}

function even(u: number): number {
  return Math.min(1, Math.max(0, u));
}

function durationOf(move: Move): number {
  if (move.kind === 'sequence') {
    return move.moves.reduce(
      (sum, step) => sum + (holdsRod(step) ? step.duration_s : durationOf(step)),
      0
    );
  }
  return turnOf(move).duration_s;
}

/** The reel may turn, the rod does not. */
function holdsRod(step: SequenceStep): step is Extract<SequenceStep, { kind: 'pause' | 'reel' }> {
  return step.kind === 'pause' || step.kind === 'reel';
}

function anglesAt(move: Move, t_s: number, start: RodAngles, share: Share): RodAngles {
  if (move.kind !== 'sequence') return turnedAt(turnOf(move), t_s, share);
  let now = start;
  let begin_s = 0;
  for (const step of move.moves) {
    if (begin_s > t_s) break;
    if (!holdsRod(step)) now = turnedAt(turnOf(step), t_s - begin_s, share);
    begin_s += holdsRod(step) ? step.duration_s : turnOf(step).duration_s;
  }
  return now;
}

function turnedAt(turn: Turn, t_s: number, share: Share): RodAngles {
  const angle = turn.from_deg + (turn.to_deg - turn.from_deg) * share(t_s / turn.duration_s);
  return turn.kind === 'lift'
    ? { elevation_deg: angle, azimuth_deg: 0 }
    : { elevation_deg: turn.elevation_deg, azimuth_deg: angle };
}

function turnOf(move: Move): Turn {
  if (move.kind === 'lift' || move.kind === 'sweep') return move;
  throw new RangeError(`a hand turns the rod: it cannot make a ${move.kind}`);
}
