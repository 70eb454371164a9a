import { Rating, type Grade } from 'ts-fsrs';
import type { Report, StoredAnswer } from '../../wire';

/**
 * The one place where an answer becomes a grade of the scheduler. A wrong answer, and a right one
 * that was guessed, have not been remembered: with three options, one guess in three is right. What
 * had to be worked out was remembered with effort. The scheduler's highest grade is for what is too
 * easy to be asked again; a learner cannot judge that of a question that is new each time, so nothing
 * is mapped to it.
 */
const WHEN_RIGHT: Record<Report, Grade> = {
  knew: Rating.Good,
  'worked out': Rating.Hard,
  guessed: Rating.Again
};

export function gradeOf({ right, report }: Pick<StoredAnswer, 'right' | 'report'>): Grade {
  return right ? WHEN_RIGHT[report] : Rating.Again;
}
