import { gradeTry, type Challenge } from '../scoring';
import { errorScores, type ErrorScores } from './error-scores';
import type { HomeworkResult, HomeworkTry } from './homework';
import { errorOf, markOfGraded, type Mark } from './mark';
import { rulerOf, type Ruler } from './ruler';

export type GradedTry = ReturnType<typeof gradeTry> & {
  made: HomeworkTry;
  /** Null where the challenge asks for no distance. */
  mark: Mark | null;
};

/** One challenge of a homework as a guide reads it. */
export interface ChallengeReport {
  challenge: Challenge;
  tries: GradedTry[];
  passed: number;
  /** Errors as parts of the distance meant; null without tries or without a distance. */
  scores: ErrorScores | null;
}

export interface HomeworkReport {
  challenges: ChallengeReport[];
  /** The client's hand over all challenges with a distance; null while there are too few tries. */
  ruler: Ruler | null;
}

/** Grades every try of a result again. Throws ScenarioError for an input that the model refuses. */
export function gradeHomework({ assignment, tries }: HomeworkResult): HomeworkReport {
  const challenges = assignment.challenges.map((challenge, i): ChallengeReport => {
    const graded = tries
      .filter((made) => made.challenge === i)
      .map((made, n) => gradedTry(made, challenge, n));
    const marks = marksOf(graded);
    return {
      challenge,
      tries: graded,
      passed: graded.filter(({ grade }) => grade.passed).length,
      scores: marks.length > 0 ? errorScores(marks.map(errorOf)) : null
    };
  });
  return { challenges, ruler: rulerOf(challenges.flatMap((one) => marksOf(one.tries))) };
}

export function gradedTry(made: HomeworkTry, challenge: Challenge, n: number): GradedTry {
  const graded = gradeTry(challenge, made.input);
  const { input, at, guess_m } = made;
  const stored = { id: `${n}`, challenge: challenge.id, at, input, guess_m };
  return { ...graded, made, mark: markOfGraded(stored, challenge, graded) };
}

function marksOf(tries: readonly GradedTry[]): Mark[] {
  return tries.flatMap(({ mark }) => mark ?? []);
}
