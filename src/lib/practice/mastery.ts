import type { GuessQuantity } from '../scoring';
import { GOOD_WITHIN, MASTERED } from './design';
import { errorScores, type ErrorScores } from './error-scores';

/** What mastery asks of a try. */
export interface JudgedTry {
  /** In the unit of the drill's criterion, see design.ts: of a distance, 0.5 is half as far again. */
  error: number;
  /** Made in the pace asked; where no distance is asked, passed. */
  isRight: boolean;
}

/** Whether nothing of the try is to be changed. */
export function isGood({ error, isRight }: JudgedTry, asks: GuessQuantity): boolean {
  return isRight && Math.abs(error) <= GOOD_WITHIN[asks];
}

/** How a check went, and what it wanted that was not there. */
export interface CheckResult {
  scores: ErrorScores;
  /** Share of tries that were right. */
  right: number;
  missed: readonly ('bias' | 'spread' | 'right')[];
  isPassed: boolean;
}

/** Judges a check by the criterion, never by a number of tries. Throws RangeError for an empty one. */
export function judgeCheck(attempts: readonly JudgedTry[], asks: GuessQuantity): CheckResult {
  const least = MASTERED[asks];
  const scores = errorScores(attempts.map(({ error }) => error));
  const right = attempts.filter(({ isRight }) => isRight).length / attempts.length;
  const missed = [
    ...(Math.abs(scores.constant) <= least.bias ? [] : (['bias'] as const)),
    ...(scores.variable <= least.spread ? [] : (['spread'] as const)),
    ...(right >= least.right ? [] : (['right'] as const))
  ];
  return { scores, right, missed, isPassed: missed.length === 0 };
}
