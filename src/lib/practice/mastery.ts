import { MASTERED } from './design';
import { errorScores, type ErrorScores } from './error-scores';

/** What mastery asks of a try. */
export interface Attempt {
  /** A part of the distance meant: 0.5 is half as far again. */
  error: number;
  isPaceRight: boolean;
}

/** How a check went, and what it wanted that was not there. */
export interface CheckResult {
  scores: ErrorScores;
  /** Share of tries in the pace asked. */
  inPace: number;
  missed: readonly ('bias' | 'spread' | 'pace')[];
  isPassed: boolean;
}

/** Judges a check by the criterion, never by a number of tries. Throws RangeError for an empty one. */
export function judge(attempts: readonly Attempt[]): CheckResult {
  const scores = errorScores(attempts.map(({ error }) => error));
  const inPace = attempts.filter(({ isPaceRight }) => isPaceRight).length / attempts.length;
  const missed = [
    ...(Math.abs(scores.constant) <= MASTERED.bias ? [] : (['bias'] as const)),
    ...(scores.variable <= MASTERED.spread ? [] : (['spread'] as const)),
    ...(inPace >= MASTERED.inPace ? [] : (['pace'] as const))
  ];
  return { scores, inPace, missed, isPassed: missed.length === 0 };
}
