import { judgedAgain, type GivenAnswer } from '../practice/judged';
import { DataError } from '../scoring';

/** An answer to judge, and what the homework asks about. */
export interface Question {
  given: GivenAnswer;
  objectives: readonly string[];
}

/** What is kept of it. */
export interface Verdict {
  objective: string;
  right: boolean;
}

/** A verdict or what was wrong with the answer, fit to be sent from one thread to another. */
export type Answer =
  | { kind: 'verdict'; verdict: Verdict }
  | { kind: 'fault'; path: string; value: unknown; reason: string }
  | { kind: 'error'; message: string };

/** Judges at once: up to a second of work for a question that was not met before. */
export function answerTo({ given, objectives }: Question): Answer {
  try {
    const { item, verdict } = judgedAgain(given, objectives);
    return { kind: 'verdict', verdict: { objective: item.objective, right: verdict.right } };
  } catch (error) {
    if (error instanceof DataError) {
      const { path, value, reason } = error;
      return { kind: 'fault', path, value, reason };
    }
    return { kind: 'error', message: String(error) };
  }
}

/** Throws DataError for what is no answer to a question about the homework's objectives. */
export function verdictIn(answer: Answer): Verdict {
  if (answer.kind === 'verdict') return answer.verdict;
  if (answer.kind === 'fault') throw new DataError(answer.path, answer.value, answer.reason);
  throw new Error(`judging: ${answer.message}`);
}
