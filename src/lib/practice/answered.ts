import { AIM } from './review';
import type { Report } from '../wire';

/** What answers to questions about one thing come to. */
export interface AnswerTally {
  answered: number;
  right: number;
  /** Of the right ones those that were guessed. */
  guessed: number;
  /** Whether the lesson is worth going back to. */
  isWeak: boolean;
}

/**
 * Weak is where less was right than the review aims at; what was right by a guess has not been known.
 * Without an answer nothing is weak.
 */
export function answeredOf(answers: readonly { right: boolean; report: Report }[]): AnswerTally {
  const right = answers.filter((one) => one.right);
  const guessed = right.filter(({ report }) => report === 'guessed').length;
  return {
    answered: answers.length,
    right: right.length,
    guessed,
    isWeak: answers.length > 0 && (right.length - guessed) / answers.length < AIM.least
  };
}
