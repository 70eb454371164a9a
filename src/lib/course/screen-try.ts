import { parseSetup, simulate, type Move, type Result, type SequenceStep } from '../model';
import { gradeRun, TryEnd, type Challenge, type GradedRun } from '../scoring';
import { byHand, type HandInput } from './hand';

/** After what was counted or watched for, a person acts so much later at most, s. A design value. */
const LATE_S = 2;
const EXACTLY = { reach: 0, pace: 0, isEven: false };

/** A move as the screen takes it: what comes after the try has ended by itself is not made. */
export function onScreen(challenge: Challenge, move: Move): GradedRun {
  const made = byExactHand(challenge, move);
  const ended = endOf(challenge, made);
  const { input, result } = ended === null ? made : runOf(challenge, until(ended, made.input));
  return { result, grade: gradeRun(challenge, { move: input, result }) };
}

/** Whether the try ends by itself before one who is late after each rest has done what comes next. */
export function endsUnacted(challenge: Challenge, move: Move): boolean {
  return endOf(challenge, byExactHand(challenge, late(move))) !== null;
}

/** What comes last has nothing after it to be late for. */
function late(move: Move): Move {
  if (move.kind !== 'sequence') return move;
  const { moves } = move;
  const longer = (step: SequenceStep, i: number): SequenceStep =>
    step.kind === 'pause' && i < moves.length - 1
      ? { ...step, duration_s: step.duration_s + LATE_S }
      : step;
  return { ...move, moves: moves.map(longer) };
}

interface Made {
  input: HandInput;
  result: Result;
}

function byExactHand(challenge: Challenge, move: Move): Made {
  return runOf(challenge, byHand(move, challenge.start, EXACTLY));
}

function runOf({ setup, hold_s }: Challenge, input: HandInput): Made {
  return { input, result: simulate({ ...setup, move: input, hold_s }) };
}

/** The tick of the move at which the try is over; null where it lasts as long as the move. */
function endOf(challenge: Challenge, { input, result }: Made): number | null {
  const { setup, plane, start, longest_pause_s } = challenge;
  const turns = plane === 'lift' ? 'elevation_deg' : 'azimuth_deg';
  const end = new TryEnd(parseSetup(setup), start[turns], longest_pause_s);
  const { t_s, bait_x_m, bait_z_m } = result.trace;
  const ended = input[turns].findIndex((angle_deg, i) =>
    end.next({
      t_s: t_s[i],
      angle_deg,
      taken_m: input.line_in_m?.[i] ?? 0,
      bait_x_m: bait_x_m[i],
      bait_z_m: bait_z_m[i]
    })
  );
  return ended === -1 ? null : ended;
}

function until(tick: number, { elevation_deg, azimuth_deg, line_in_m, ...rest }: HandInput) {
  const made = (all: number[]) => all.slice(0, tick + 1);
  return {
    ...rest,
    elevation_deg: made(elevation_deg),
    azimuth_deg: made(azimuth_deg),
    ...(line_in_m && { line_in_m: made(line_in_m) })
  };
}
