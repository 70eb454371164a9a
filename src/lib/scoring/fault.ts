import { TICK_S, type Result } from '../model';
import type { Challenge } from './challenge';
import { QUICK_PACE, type Correction } from './correction';
import {
  DRAGGED_M,
  isHop,
  isReadFromHand,
  travelGoalOf,
  type Goal,
  type TravelGoal
} from './goals';
import { marksLost, type GradedRun } from './grade';
import { NO_MOVE_M, tipTravel } from './run-measures';
import { pullsFromSlack } from './goals/tip-measures';
import { isAsFarAs, isSlowerThan } from './same-move';
import { tipMotionOf } from './tip-motion';

/**
 * The one thing in a hand's move that cost most:
 * `still` the tip hardly moved · `towards` it went towards the bait · `forward_first` it did so first, and then pulled
 * for the most part what that gave · `slack` it only took up slack ·
 * `gave_back` it swung back and let line out · `too_fast` · `too_slow` far enough, where slack sinks away under a
 * slow pull · `jerk` in good time, but with a burst ·
 * `ran_on` the tip went
 * far enough, and at its pace the bait ran on · `drifted` the rod had stopped, and the boat dragged the bait on · `reel` the reel moved the bait, where the rod was to · `too_far` · `too_short` · `no_hops` · `slack_hops` the rod was taken back after a hop, and the next lift only took up slack · `few_hops` · `many_hops` · `low_hops` · `tiny_hops` none half as high as asked · `high_hops` · `none`.
 */
export type Fault =
  | 'none'
  | 'still'
  | 'towards'
  | 'forward_first'
  | 'slack'
  | 'gave_back'
  | 'too_fast'
  | 'too_slow'
  | 'jerk'
  | 'ran_on'
  | 'drifted'
  | 'reel'
  | 'too_far'
  | 'too_short'
  | 'no_hops'
  | 'slack_hops'
  | 'few_hops'
  | 'many_hops'
  | 'low_hops'
  | 'tiny_hops'
  | 'high_hops';

/** More line than this given back is a fault of its own, m: two inches; less is a rod's ringing. */
const GAVE_BACK_M = 0.05;
/** A move that took this part of the time needed was too fast as a whole. */
const QUICK_PART = 0.8;
/** A tip this much faster at its fastest than the smooth move is a burst. */
const BURST_FACTOR = 1.5;

/** Names the one thing to change first. Without a correction a burst cannot be told from haste. */
export function faultOf(
  challenge: Challenge,
  { result, grade }: GradedRun,
  correction?: Correction | null
): Fault {
  const lost = lossesOf(grade.goals, result);
  const total = Object.values(lost).reduce((sum, marks) => sum + marks, 0);
  if (total < 0.5) return 'none';
  if (isReelsWork(challenge, { result, grade })) return 'reel';
  const idle = idleFault(challenge, { result, grade });
  if (idle === 'slack' && correction && isOnlySlow(result, correction)) return 'too_slow';
  if (idle) return idle;
  if (isHopOnSlack(challenge, { result, grade })) return 'slack_hops';
  if (lost.hops > Math.max(lost.travel, lost.side)) return hopsFault(challenge, result);
  return lost.side > 0 && lost.side >= lost.travel
    ? hasteFault(result, correction)
    : distanceFault(challenge, { result, grade }, correction);
}

type Losses = Record<'travel' | 'side' | 'hops', number>;

/** Marks lost by cause, but for the goals that have advice of their own. Stones are missed by stopping short of them or by flying over. */
function lossesOf(goals: Graded, result: Result): Losses {
  const lost: Losses = { travel: 0, side: 0, hops: 0 };
  const isReeled = isDrawnByReel(goals, result);
  for (const { goal, met } of goals) {
    // How quick the reel made it is none of the hand's pace.
    if (!isReadFromHand(goal) || (goal.kind === 'speed' && isReeled)) continue;
    lost[causeOf(goal, result)] += marksLost({ goal, met });
  }
  return lost;
}

function causeOf(goal: Goal, result: Result): keyof Losses {
  if (goal.kind === 'stones') return result.airborne_s > 0 ? 'side' : 'travel';
  return goal.kind === 'travel' || goal.kind === 'hops' ? goal.kind : 'side';
}

/** What the rod was to do, the reel did; where it takes up slack as well, its own goal says so. */
function isReelsWork({ goals }: Challenge, { result, grade }: GradedRun): boolean {
  if (goals.some(({ kind }) => kind === 'reeled' || kind === 'strike')) return false;
  const travel = travelIn(grade.goals);
  return travel !== undefined && travel.met < 1 && isDrawnByReel(grade.goals, result);
}

type Graded = GradedRun['grade']['goals'];

const travelIn = (goals: Graded) => goals.find(({ goal }) => goal.kind === 'travel');

/** As it was graded: what the reel dragged is none of the rod's way, m. */
const rodsTravel = ({ result, grade }: GradedRun): number =>
  travelIn(grade.goals)?.value ?? result.travel_m;

/** Whether the bait came farther than the rod brought it. */
function isDrawnByReel(goals: Graded, result: Result): boolean {
  const travel = travelIn(goals);
  return travel !== undefined && result.travel_m - travel.value > DRAGGED_M;
}

/** Tasks in which line is to be given back. */
const GIVE_BACK = new Set<Goal['kind']>(['reeled', 'lowered', 'follow', 'twitches', 'freed']);

function hasGivenBack({ goals }: Challenge, result: Result): boolean {
  if (goals.some(({ kind }) => GIVE_BACK.has(kind))) return false;
  return tipMotionOf(result).gaveBack_m > GAVE_BACK_M;
}

function idleFault(challenge: Challenge, { result, grade }: GradedRun): Fault | null {
  if (isStill(result)) return 'still';
  if (Math.abs(rodsTravel({ result, grade })) >= NO_MOVE_M) return null;
  if (isForwardFirst(challenge, result)) return 'forward_first';
  const { taken_m, pulled_m } = tipMotionOf(result);
  if (taken_m < -NO_MOVE_M || pulled_m < NO_MOVE_M) return 'towards';
  return hasGivenBack(challenge, result) ? 'gave_back' : 'slack';
}

/** Tasks that begin with the rod going down, or forward, or in which that alone is asked. */
const FORWARD_FIRST = new Set<Goal['kind']>([
  'bottom_first',
  'follow',
  'freed',
  'strike',
  'twitches'
]);

/** Whether most of the pull only took back what the tip had given first. */
function isForwardFirst({ goals }: Pick<Challenge, 'goals'>, result: Result): boolean {
  if (goals.some(({ kind }) => FORWARD_FIRST.has(kind))) return false;
  const { forwardFirst_m, pulled_m } = tipMotionOf(result);
  return forwardFirst_m > GAVE_BACK_M && pulled_m < forwardFirst_m;
}

/** Whether the hand never moved the rod, of a hand's own run (see handRun). */
export function isStill(result: Result): boolean {
  return tipTravel(result) < NO_MOVE_M;
}

function hasteFault(result: Result, correction?: Correction | null): Fault {
  if (!correction) return 'too_fast';
  const hand = tipMotionOf(result);
  const smooth = tipMotionOf(correction.result);
  // As quick as the hand was over the way it went, not over the way it should have gone.
  const needed_s = (smooth.duration_s * hand.taken_m) / smooth.taken_m;
  // A stop between two quick pulls makes neither of them slower.
  if (hand.moving_s < QUICK_PART * needed_s) return 'too_fast';
  // Turned evenly it would have done in this time: to be told the very time it took helps nobody.
  const isInTime = hand.duration_s >= QUICK_PACE * needed_s;
  const isBurst = hand.peakSpeed_m_s > BURST_FACTOR * smooth.peakSpeed_m_s;
  return isInTime || isBurst ? 'jerk' : 'too_fast';
}

function distanceFault(
  challenge: Challenge,
  { result, grade }: GradedRun,
  correction?: Correction | null
): Fault {
  const goal = travelGoalOf(challenge);
  if (!goal || rodsTravel({ result, grade }) <= goal.target_m) {
    if (isForwardFirst(challenge, result)) return 'forward_first';
    if (hasGivenBack(challenge, result)) return 'gave_back';
    return correction && isOnlySlow(result, correction) ? 'too_slow' : 'too_short';
  }
  if (hasDriftedOn(challenge, result, goal)) return 'drifted';
  const isTipRight =
    correction &&
    tipTravel(result) <= correction.tipTravel_m + Math.min(correction.band_m, goal.band_m);
  if (!isTipRight) return 'too_far';
  return hasteFault(result, correction) === 'jerk' ? 'jerk' : 'ran_on';
}

/** Whether the tip went as far as the correction's, or farther, and took longer, where slower does not do it. */
function isOnlySlow(result: Result, correction: Correction): boolean {
  const isFarEnough = isAsFarAs(correction, result) || tipTravel(result) > correction.tipTravel_m;
  return isFarEnough && isSlowerThan(correction, result);
}

/** Whether more of what is too far was dragged by the boat, after the rod had stopped, than by the rod. */
function hasDriftedOn(
  { setup, hold_s }: Challenge,
  result: Result,
  { target_m, band_m }: TravelGoal
): boolean {
  if ((setup.drift_m_s ?? 0) >= 0) return false;
  const { start_s, duration_s } = tipMotionOf(result);
  const { bait_x_m: x } = result.trace;
  const last = x.length - 1;
  const ended = Math.min(last, Math.round((start_s + duration_s + hold_s) / TICK_S));
  const over_m = Math.max(0, Math.abs(x[ended] - x[0]) - target_m - band_m);
  return Math.abs(x[last] - x[ended]) > over_m;
}

/**
 * Whether it hopped from a tight line, and then, from where the rod had been taken back, no more or lower
 * than was asked.
 */
export function isHopOnSlack({ goals }: Challenge, { result, grade }: GradedRun): boolean {
  const asked = grade.goals.find(({ goal }) => goal.kind === 'hops');
  if (asked?.goal.kind !== 'hops' || asked.met === 1 || asked.goal.count === 1) return false;
  if (goals.some(({ kind }) => GIVE_BACK.has(kind))) return false;
  const [first, ...others] = result.hops.map(({ height_m }) => height_m);
  const [lowest] = asked.goal.height_m;
  const isRight = (height_m: number) => height_m >= lowest;
  const fromSlack = pullsFromSlack(result);
  return first >= lowest && fromSlack > 0 && others.filter(isRight).length < fromSlack;
}

function hopsFault({ goals }: Pick<Challenge, 'goals'>, result: Result): Fault {
  const goal = goals.find((one) => one.kind === 'hops');
  if (!goal) return 'none';
  if (result.hops.length === 0)
    return isForwardFirst({ goals }, result) ? 'forward_first' : 'no_hops';
  const [lowest, highest] = goal.height_m;
  if (result.hops.every(({ height_m }) => !isHop(goal.height_m, height_m))) return 'tiny_hops';
  const low = result.hops.filter(({ height_m }) => height_m < lowest).length;
  const high = result.hops.filter(({ height_m }) => height_m > highest).length;
  if (high > low) return 'high_hops';
  if (result.hops.length >= goal.count && low > 0) return 'low_hops';
  return result.hops.length < goal.count ? 'few_hops' : 'many_hops';
}
