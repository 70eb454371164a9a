import { planOf } from '$lib/practice';
import type { RodInput } from '$lib/model';
import { figureOf, formatFigure, type Challenge, type Units } from '$lib/scoring';
import type { Assignment, KeptGuess, StoredAnswer } from '$lib/wire';
import { isLate } from '$lib/shell';
import { contactText, guessText } from './report-text';

/** A try as a report lists it, whoever graded it. */
export interface ReportedTry extends KeptGuess {
  /** None where it came by a link. */
  id?: string;
  input: RodInput;
  marks: number;
  says: string;
  small: string;
}

export interface ReportedChallenge {
  challenge: Challenge;
  /** How it went, and what to say to this hand; empty where there is nothing to say yet. */
  line: string;
  advice: string;
  tries: ReportedTry[];
  /** How many cannot be read or run any more. */
  leftOut: number;
}

type ReportedAnswer = Pick<StoredAnswer, 'item' | 'seed' | 'given' | 'report' | 'right'>;

export interface ReportedObjective {
  objective: string;
  /** As judged again; `isFlagged` where the phone said otherwise. */
  answers: readonly (ReportedAnswer & { isFlagged?: boolean; isLate: boolean })[];
  right: number;
  /** Of the right ones those that were guessed. */
  guessed: number;
  /** Lesson to go back to. */
  backTo: string | null;
}

/** What a client did, as a guide reads it: the same by link and by server. */
export interface ReportView {
  /** How many questions about each objective were asked. */
  questions: number;
  challenges: ReportedChallenge[];
  objectives: ReportedObjective[];
}

interface Graded extends KeptGuess {
  marks: number;
  /** Who gave the marks, and what today's model gives, where it was an older one. */
  markedBy?: string;
  /** Of the task's figure; null where nothing was reached. */
  figure: number | null;
  contact: number;
  /** What tip and bait did and why; empty where it was not kept. */
  reason: string;
  agrees: boolean;
  at: string;
  input: Pick<RodInput, 'rod'>;
}

/** What of the homework the words of a try depend on. */
export type SetTask = Pick<Assignment, 'phase' | 'due' | 'tries' | 'questions'>;

/** The `n`-th try at a challenge in few words. */
export function tryWords(
  challenge: Challenge,
  { phase, due }: Pick<SetTask, 'phase' | 'due'>,
  n: number,
  graded: Graded,
  units: Units
): Pick<ReportedTry, 'says' | 'small'> {
  const guess = guessText(graded, challenge, units);
  const small = [
    isLate(graded.at, due) ? 'late' : '',
    `${graded.marks} of 100${graded.markedBy ?? ''}`,
    planOf(phase, n).isHidden ? 'jig hidden' : 'in sight',
    graded.input.rod === 'real' ? 'real rod' : '',
    contactText(challenge, graded.contact),
    guess && `guessed ${guess}`,
    graded.agrees ? '' : 'differs from the phone'
  ];
  return {
    says: graded.figure === null ? '–' : formatFigure(figureOf(challenge), graded.figure, units),
    small: `${small.filter(Boolean).join(', ')}. ${graded.reason}`.trim()
  };
}

/** "3 of 5 passed; 5 were asked." */
export function passedText(passed: number, made: number, asked: number): string {
  return `${passed} of ${made} passed; ${asked} asked for.`;
}
