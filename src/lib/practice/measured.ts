import type { GuessQuantity, Challenge, GoalGrade, GradedRun } from '../scoring';
import { TOLD_OUTSIDE } from './design';
import { errorOf, isPaceRight, travelOf } from './mark';
import type { Attempt } from './mastery';

/** A practised try as mastery and feedback read it. */
export interface Measured extends Attempt {
  asks: GuessQuantity;
  /** The error on the scale of the bands outside which it is told, see feedback-plan.ts. */
  miss: number;
}

/** Errors beyond this many half bands say no more than "wide of it". */
const WIDEST = 2;

/**
 * A try measured by what its challenge is for: travel as a part of the distance meant; a hop's height,
 * or the wait after the touch, in half widths of the band asked, from its middle. Null where the
 * challenge asks for none of these.
 */
export function measuredOf(challenge: Challenge, { result, grade }: GradedRun): Measured | null {
  const travel = travelOf(challenge);
  if (travel) {
    const error = errorOf({ bait_m: result.travel_m, meant_m: travel.target_m });
    return { asks: 'travel', error, miss: error, isRight: isPaceRight(grade) };
  }
  for (const { goal, value } of grade.goals) {
    const band = bandOf(goal);
    if (!band) continue;
    const did = goal.kind === 'hops' ? highest(result.hops) : value;
    const error = inHalfBands(did, band.range);
    const miss = error * TOLD_OUTSIDE.first;
    return { asks: band.asks, error, miss, isRight: grade.passed };
  }
  return null;
}

function bandOf(goal: GoalGrade['goal']): { asks: GuessQuantity; range: [number, number] } | null {
  if (goal.kind === 'hops') return { asks: 'height', range: goal.height_m };
  if (goal.kind === 'bottom_first') return { asks: 'down', range: [0, goal.within_s] };
  return null;
}

function highest(hops: GradedRun['result']['hops']): number {
  return Math.max(0, ...hops.map(({ height_m }) => height_m));
}

function inHalfBands(value: number, [low, high]: [number, number]): number {
  const error = (value - (low + high) / 2) / ((high - low) / 2);
  return Math.min(WIDEST, Math.max(-WIDEST, error));
}
