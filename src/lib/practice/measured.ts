import { figureOf, type GuessQuantity, type Challenge, type GradedRun } from '../scoring';
import { TOLD_OUTSIDE } from './design';
import { errorOf, isPaceRight, travelOf } from './mark';
import type { JudgedTry } from './mastery';

/** A practised try as mastery and feedback read it. */
export interface Measured extends JudgedTry {
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
  const { goal, asked } = figureOf(challenge);
  const asks = goal && ASKS[goal.kind];
  if (!asks || !asked || asked[1] === null) return null;
  // A rod that never moved waited too long.
  const error = inHalfBands(grade.figure ?? Infinity, [asked[0], asked[1]]);
  const miss = error * TOLD_OUTSIDE.first;
  return { asks, error, miss, isRight: grade.passed };
}

/** Goals whose figure can be guessed and mastered, beside a distance. */
const ASKS: Partial<Record<string, GuessQuantity>> = { hops: 'height', bottom_first: 'down' };

function inHalfBands(value: number, [low, high]: [number, number]): number {
  const error = (value - (low + high) / 2) / ((high - low) / 2);
  return Math.min(WIDEST, Math.max(-WIDEST, error));
}
