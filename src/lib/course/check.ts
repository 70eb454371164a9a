import type { Move } from '../model';
import {
  asksCall,
  gradeRun,
  gradeTry,
  PASS_MARK,
  REFERENCE_MARK,
  solveCorrection,
  type Challenge,
  phaseOf,
  type Correction,
  type GradedRun,
  type Guess,
  type Phase
} from '../scoring';
import { claimFaults } from './claims';
import { byHand } from './hand';
import { followAdvice } from './follow-advice';
import { LAZY, lazyRun, type LazyName } from './lazy';
import { LAZY_WAITS, lazyWait, type LazyWaitName } from './lazy-waits';
import { LAZY_CALLS, lazyCall, type LazyCallName } from './lazy-calls';
import type { Lesson, PredictSection } from './lesson';
import { minutesOf } from './lesson-minutes';
import { missFaults, resultFaults } from './result-faults';
import { isVaried, nthTry } from './nth-try';
import { answerOf, isCertainPrediction } from './prediction';
import { seededRandom, type Random } from '../model';

/** Hands that make the reference move roughly: each must pass, or no learner could. */
const HANDS = 6;
/** So many tries of a challenge whose tries differ are looked at. */
const VARIED_TRIES = 8;
/** How far off a hand is that means to be right, as a share of reach and of pace. */
const HAND_SPREAD = 0.1;

export interface ContentReport {
  id: string;
  phase: Phase;
  referenceMarks: number;
  beginnerMarks: number;
  /** Lowest marks among rough hands. */
  roughHandMarks: number;
  /** Marks of runs without the skill, of waits cut short, and of wrong calls of a right run (lazy.ts, lazy-waits.ts, lazy-calls.ts): none may pass. */
  lazy: Record<LazyName, number> & Partial<Record<LazyWaitName | LazyCallName, number>>;
  /** Marks after five typical misses and the advice given to each, see follow-advice.ts: all must pass. */
  advised: number[];
  /** The move that the trainer would advise, or null where it knows none. */
  advice: Pick<Correction, 'tipTravel_m' | 'band_m' | 'duration_s'> | null;
}

export interface QuestionReport {
  ask: string;
  /** Id of the option that the model makes right. */
  key: string;
}

export interface LessonReport {
  id: string;
  title: string;
  minutes: number;
  questions: QuestionReport[];
  challenges: ContentReport[];
  /** What’s wrong with it, each naming the challenge or question; empty if all is well. */
  faults: string[];
}

/** Runs everything that a lesson asks and shows, as its learners will. */
export function checkLesson(lesson: Lesson): LessonReport {
  const { id, title, minutes } = lesson;
  const faults: string[] = [];
  const questions = lesson.sections
    .filter((section) => section.kind === 'predict')
    .map((section) => checkQuestion(section, faults));
  const challenges = lesson.challenges.map((challenge) => {
    const correction = solveCorrection(challenge);
    return {
      ...checkChallenge(challenge, faults, HANDS, correction),
      advice: adviceFor(correction)
    };
  });
  faults.push(...claimFaults(lesson), ...minutesFault(lesson));
  return { id, title, minutes, questions, challenges, faults };
}

/** What is said of a lesson's length is what its own steps take. */
function minutesFault(lesson: Lesson): string[] {
  const taken = minutesOf(lesson);
  return taken === lesson.minutes ? [] : [`is said to take ${lesson.minutes} min, takes ${taken}`];
}

function checkQuestion({ question }: PredictSection, faults: string[]): QuestionReport {
  const { key } = answerOf(question);
  if (!isCertainPrediction(question))
    faults.push(`"${question.ask}": slack or drag area could change the key`);
  return { ask: question.ask, key: key.id };
}

/** So far below passing every lazy run stays, marks: nearer, and a change of the model by a hair lets one pass. */
export const LAZY_BELOW = 5;

/** Grades reference, beginner and rough hands, and notes what is wrong. */
export function checkChallenge(
  challenge: Challenge,
  faults: string[],
  hands = HANDS,
  correction = solveCorrection(challenge)
): Omit<ContentReport, 'advice'> {
  const { id } = challenge;
  const tries = triesOf(challenge);
  const referenceMarks = Math.min(...tries.map((one) => marksOf(one, one.reference)));
  const beginner = gradeTry(challenge, challenge.beginner);
  const beginnerMarks = beginner.grade.marks;
  const rough = byHands(challenge, hands, seededRandom(1));
  const roughHandMarks = Math.min(...rough.map(({ grade }) => grade.marks));
  const lazy = {
    ...lazyMarks(tries),
    ...(challenge.bite_between_s ? lazyWaitMarks(tries) : {}),
    ...lazyCallMarks(challenge)
  };
  const made = [...rough, beginner];
  faults.push(
    ...[...made.flatMap((one) => resultFaults(challenge, one)), ...missFaults(challenge, made)].map(
      (fault) => `${id}: ${fault}`
    )
  );
  const { advised, faults: adviceFaults } = followAdvice(challenge, correction);
  faults.push(...adviceFaults.map((fault) => `${id}: ${fault}`));
  if (referenceMarks < REFERENCE_MARK) {
    faults.push(`${id}: reference gets ${referenceMarks}, must get ${REFERENCE_MARK} or more`);
  }
  if (beginnerMarks >= PASS_MARK) {
    faults.push(`${id}: beginner gets ${beginnerMarks}, must get less than ${PASS_MARK}`);
  }
  if (roughHandMarks < PASS_MARK) {
    faults.push(`${id}: a rough hand gets ${roughHandMarks}, must get ${PASS_MARK} or more`);
  }
  for (const [name, marks] of Object.entries(lazy)) {
    if (marks <= PASS_MARK - LAZY_BELOW) continue;
    faults.push(`${id}: "${name}" gets ${marks}, must get ${PASS_MARK - LAZY_BELOW} at most`);
  }
  if (Math.min(...advised) < PASS_MARK) {
    faults.push(`${id}: the advice gets ${advised.join(', ')}, must get ${PASS_MARK} or more`);
  }
  return {
    id,
    phase: phaseOf(challenge),
    referenceMarks,
    beginnerMarks,
    roughHandMarks,
    lazy,
    advised
  };
}

/** Where bites come when they please, or bottoms look alike, a few tries of it; a blank one is among them. */
function triesOf(challenge: Challenge): Challenge[] {
  if (!isVaried(challenge)) return [challenge];
  return Array.from({ length: VARIED_TRIES }, (_, n) => nthTry(challenge, n));
}

/** The most that each lazy run gets in any of these tries. */
function lazyMarks(tries: readonly Challenge[]): Record<LazyName, number> {
  return Object.fromEntries(
    LAZY.map((name) => [
      name,
      Math.max(...tries.map((challenge) => marksOf(challenge, lazyRun(name, tries[0]))))
    ])
  ) as Record<LazyName, number>;
}

/** The most that the reference gets in any of these tries which ends while something could still bite. */
function lazyWaitMarks(tries: readonly Challenge[]): Record<LazyWaitName, number> {
  return Object.fromEntries(
    LAZY_WAITS.map((name) => [
      name,
      Math.max(...tries.map((challenge) => marksOf(challenge, lazyWait(name, challenge))))
    ])
  ) as Record<LazyWaitName, number>;
}

/** Marks of the reference called wrong, where a call is asked for: it was out of sight. */
function lazyCallMarks(challenge: Challenge): Partial<Record<LazyCallName, number>> {
  if (challenge.visibility === 'seen' || !asksCall(challenge)) return {};
  const { reference: move } = challenge;
  const { result } = gradeTry(challenge, move);
  const marks = (call: Guess | null) => gradeRun(challenge, { move, result, call }).marks;
  return Object.fromEntries(
    LAZY_CALLS.map((name) => [name, marks(lazyCall(name, challenge, result))])
  );
}

function marksOf(challenge: Challenge, move: Move): number {
  return gradeTry(challenge, move).grade.marks;
}

function byHands(challenge: Challenge, hands: number, random: Random): GradedRun[] {
  const off = () => HAND_SPREAD * (2 * random() - 1);
  return Array.from({ length: hands }, (_, i) => {
    const error = { reach: off(), pace: off(), isEven: i % 2 === 1 };
    return gradeTry(challenge, byHand(challenge.reference, challenge.start, error));
  });
}

function adviceFor(correction: Correction | null): ContentReport['advice'] {
  if (!correction) return null;
  const { tipTravel_m, band_m, duration_s } = correction;
  return { tipTravel_m, band_m, duration_s };
}
