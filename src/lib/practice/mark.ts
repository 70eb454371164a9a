import {
  handRun,
  NO_MOVE_M,
  peakBaitSpeed,
  tipTravel,
  type Challenge,
  type Grade,
  type GradedRun
} from '../scoring';
import type { StoredTry, TryMark } from '../wire';

/** One try on the ruler: what was meant and what was done, and when. */
export interface Mark extends TryMark {
  id: string;
  challenge: string;
  at: string;
  guess_m?: number;
}

type Made = Pick<StoredTry, 'id' | 'at' | 'guess_m'>;

/** A graded try as the ruler has it, or null where its challenge asks for no distance or the rod was not moved. */
export function markOf(made: Made, challenge: Challenge, graded: GradedRun): Mark | null {
  const mark = tryMarkOf(challenge, graded);
  // A rod that nobody moved says nothing of the hand.
  if (!mark || mark.tip_m < NO_MOVE_M) return null;
  const { id, at, guess_m } = made;
  const said = guess_m === undefined ? {} : { guess_m };
  return { id, at, challenge: challenge.id, ...mark, ...said };
}

/** The same of the try alone, whoever made it and when. */
export function tryMarkOf(
  challenge: Challenge,
  { result, grade }: Pick<GradedRun, 'result' | 'grade'>
): TryMark | null {
  const travel = travelOf(challenge);
  if (!travel) return null;
  // What the rod did, as it is graded: what a reel drew along is no fault of the hand's ruler.
  const asked = grade.goals.find(({ goal }) => goal.kind === 'travel');
  return {
    meant_m: travel.target_m,
    bait_m: asked?.value ?? result.travel_m,
    tip_m: tipTravel(handRun(challenge, result)),
    lift_m: result.peak_height_m,
    speed_m_s: peakBaitSpeed(result),
    isPaceRight: isPaceRight(grade)
  };
}

export function travelOf({ goals }: Pick<Challenge, 'goals'>) {
  return goals.find((goal) => goal.kind === 'travel');
}

/** The error of a try as a part of the distance meant: 0.5 is half as far again. */
export function errorOf({ bait_m, meant_m }: Pick<Mark, 'bait_m' | 'meant_m'>): number {
  return bait_m / meant_m - 1;
}

export function isPaceRight({ goals }: Grade): boolean {
  return goals.every(({ goal, value }) => {
    if (goal.kind === 'speed') return value <= goal.most_m_s;
    return goal.kind !== 'pace' || (goal.m_s[0] <= value && value <= goal.m_s[1]);
  });
}
