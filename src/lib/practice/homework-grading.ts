import { isRetired, type Item, type Judgement } from '../course/items';
import { gradeTry, type Challenge, type GradedRun } from '../scoring';
import { callOf } from './guess';
import { answeredOf, type AnswerTally } from './answered';
import { judgedAgain } from './judged';
import { markOf, type Mark } from './mark';
import { rulerOf, type Ruler } from './ruler';
import {
  keptMarks,
  within,
  type HomeworkResult,
  type KeptMarks,
  type PacketAnswer,
  type PacketTry
} from '../wire';

/** What came of a try; null where today's model cannot run it. */
export type Grader = (challenge: Challenge, made: PacketTry) => GradedRun | null;

export type GradedHomeworkTry = GradedRun & {
  made: PacketTry;
  /** What it counts with: as it was given by an older version of the model, else today's. */
  kept: KeptMarks;
  /** Null where the challenge asks for no distance. */
  mark: Mark | null;
};

/** One challenge of a homework as a guide reads it. */
export interface ChallengeReport {
  challenge: Challenge;
  tries: GradedHomeworkTry[];
  /** How many tries today's model cannot run. */
  leftOut: number;
  passed: number;
}

/** An answer, judged again. */
export interface JudgedAnswer {
  answered: PacketAnswer;
  item: Item;
  verdict: Judgement;
}

/** What was answered about one objective. */
export interface ObjectiveReport extends AnswerTally {
  objective: string;
  answers: JudgedAnswer[];
}

export interface HomeworkReport {
  challenges: ChallengeReport[];
  objectives: ObjectiveReport[];
  /** The client's hand over all challenges with a distance; null while there are too few tries. */
  ruler: Ruler | null;
}

/** The tries of a result, each with its challenge, for whoever runs them beforehand. */
export function homeworkTriesOf({ assignment, tries }: HomeworkResult) {
  return tries.map((made) => ({ challenge: assignment.challenges[made.challenge], made }));
}

/**
 * Grades every try, by the only grader or by one that has run some of them before, and judges every
 * answer of a result again. Throws DataError for an answer that is none to this homework.
 */
export function gradeHomework(
  { assignment, tries, answers, model }: HomeworkResult,
  grade: Grader = (challenge, made) => gradeTry(challenge, made.input, callOf(made, challenge))
): HomeworkReport {
  const challenges = assignment.challenges.map((challenge, i): ChallengeReport => {
    const made = tries
      .filter((one) => one.challenge === i)
      .map((one) => ({ ...one, model: one.model ?? model }));
    const graded = made.flatMap((one, n) => gradedTry(one, challenge, n, grade) ?? []);
    return {
      challenge,
      tries: graded,
      leftOut: made.length - graded.length,
      passed: graded.filter(({ kept }) => kept.passed).length
    };
  });
  return {
    challenges,
    objectives: objectiveReports(assignment.objectives, answers),
    ruler: rulerOf(challenges.flatMap((one) => marksOf(one.tries)))
  };
}

function objectiveReports(
  objectives: readonly string[],
  given: readonly PacketAnswer[]
): ObjectiveReport[] {
  const judged = given.flatMap((answered, i): JudgedAnswer[] => {
    // Answered before the question went: nothing tells any more whether it was right.
    if (isRetired(answered.item, objectives)) return [];
    return within(`result.answers.${i}`, () => [
      { answered, ...judgedAgain(answered, objectives) }
    ]);
  });
  return objectives.map((objective) => {
    const answers = judged.filter(({ item }) => item.objective === objective);
    const marked = answers.map(({ answered: { report }, verdict: { right } }) => ({
      right,
      report
    }));
    return { objective, answers, ...answeredOf(marked) };
  });
}

function gradedTry(
  made: PacketTry & { model: string },
  challenge: Challenge,
  n: number,
  grade: Grader
): GradedHomeworkTry | null {
  const graded = grade(challenge, made);
  const kept = keptMarks(made, graded && graded.grade);
  if (!graded || !kept) return null;
  const { at, guess_m } = made;
  const mark = markOf({ id: `${n}`, at, guess_m }, challenge, graded);
  return { ...graded, made, kept, mark };
}

function marksOf(tries: readonly GradedHomeworkTry[]): Mark[] {
  return tries.flatMap(({ mark }) => mark ?? []);
}
