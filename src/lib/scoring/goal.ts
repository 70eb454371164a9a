import type { Hop, Result } from '../model';
import type { Challenge, Goal } from './challenge';
import { clamped, fading } from './fading';
import { contactWhileMoving, peakBaitSpeed } from './measure';
import { isRetrieveGoal, isStillness, retrieveShare, retrieveValue } from './retrieve-goal';

/**
 * How far outside its band a goal's share has fallen to nothing. Each is what a guide would call a
 * different move altogether; larger is kinder. The formula is in docs/scoring.md.
 */
const TRAVEL_REACH_IN_BANDS = 1;
const HEIGHT_REACH_M = 0.15;
const CONTACT_REACH = 0.25;
/** Twice the speed allowed earns nothing. */
const SPEED_REACH_IN_LIMITS = 1;
/** Flights lower than this part of the lowest hop asked for are skips, and not counted. */
const SKIP_PART = 0.5;

/**
 * What the try reached, in the goal's own unit: m, share 0–1, m/s, s, N, or how many.
 */
export function valueOf(goal: Goal, result: Result): number {
  if (isRetrieveGoal(goal)) return retrieveValue(goal, result);
  switch (goal.kind) {
    case 'travel':
      return result.travel_m;
    case 'peak_height':
      return result.peak_height_m;
    case 'contact':
      return contactWhileMoving(result);
    case 'speed':
      return peakBaitSpeed(result);
    case 'hops':
      return countedHops(goal, result.hops).length;
    case 'stones':
      return goal.touched.filter((index) => result.stones[index]?.touched).length;
  }
}

/** How well the goal was met on its own, 0–1: 1 inside its band. */
export function shareOf(goal: Goal, result: Result): number {
  if (isRetrieveGoal(goal)) return retrieveShare(goal, result);
  const value = valueOf(goal, result);
  switch (goal.kind) {
    case 'travel':
      return fading(
        Math.abs(value - goal.target_m) - goal.band_m,
        TRAVEL_REACH_IN_BANDS * goal.band_m
      );
    case 'peak_height':
      return fading(value - goal.most_m, HEIGHT_REACH_M);
    case 'contact':
      return fading(goal.least - value, CONTACT_REACH);
    case 'speed':
      return fading(value - goal.most_m_s, SPEED_REACH_IN_LIMITS * goal.most_m_s);
    case 'hops':
      return hopsShare(goal, result.hops);
    case 'stones':
      return value / goal.touched.length;
  }
}

export type TravelGoal = Extract<Goal, { kind: 'travel' }>;

export function travelGoalOf({ goals }: Pick<Challenge, 'goals'>): TravelGoal | undefined {
  return goals.find((goal) => goal.kind === 'travel');
}

/** Goals that a rod held still would meet: what they earn is limited by what was done. */
export function isRestraint(goal: Goal): boolean {
  if (isRetrieveGoal(goal)) return isStillness(goal);
  return goal.kind === 'peak_height' || goal.kind === 'contact' || goal.kind === 'speed';
}

/** How much of what a goal wants done was done, 0–1, whether or not it was overdone. */
export function progressOf(goal: Goal, result: Result): number {
  if (isRetrieveGoal(goal)) return retrieveShare(goal, result);
  const value = valueOf(goal, result);
  if (goal.kind === 'travel') return clamped(value / (goal.target_m - goal.band_m));
  if (goal.kind === 'hops') return clamped(value / goal.count);
  return goal.kind === 'stones' ? value / goal.touched.length : 0;
}

type HopsGoal = Extract<Goal, { kind: 'hops' }>;

function countedHops(goal: HopsGoal, hops: readonly Hop[]): readonly Hop[] {
  return hops.filter((hop) => hop.height_m >= SKIP_PART * goal.height_m[0]);
}

/** The best `count` hops each earn their size's share; each hop too many costs one of them. */
function hopsShare(goal: HopsGoal, hops: readonly Hop[]): number {
  const [lowest, highest] = goal.height_m;
  const counted = countedHops(goal, hops);
  const sizes = counted
    .map((hop) => fading(Math.max(lowest - hop.height_m, hop.height_m - highest), highest - lowest))
    .sort((a, b) => b - a)
    .slice(0, goal.count);
  const tooMany = Math.max(0, counted.length - goal.count);
  return clamped((sizes.reduce((sum, size) => sum + size, 0) - tooMany) / goal.count);
}
