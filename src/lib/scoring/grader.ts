import { simulate, type Move, type Result } from '../model';
import { gradeCall } from './call';
import type { Challenge } from './challenge';
import { BY_NEARNESS } from './fading';
import {
  figureIn,
  figureOf,
  isMain,
  reeledFirst,
  shareOf,
  valueOf,
  type WeightedGoal
} from './goals';
import { moveMarks, type Grade, type GradedRun, type GoalGrade, type MadeRun } from './grade';
import type { Guess } from './guess';
import { handRun } from './hand-run';
import { PASS_MARK } from './pass-mark';
import { NO_MOVE_M, tipTravel } from './run-measures';
import { runToGrade } from './run-to-grade';

/** Marks for what the bait did, and for what was called of it. The formula is in docs/scoring.md. */
export function gradeRun(challenge: Challenge, { move, result, call: guess }: MadeRun): Grade {
  const run = runToGrade(challenge.setup, move, result, challenge.bite_between_s?.[1]);
  const isMade = !isUntouched(challenge, result);
  const met = challenge.goals.map((goal) => (isMade || !isMain(goal) ? shareOf(goal, run) : 0));
  const done = doneOf(challenge, met);
  const goals = challenge.goals.map((goal, i): GoalGrade => {
    const share = done * (isMain(goal) ? 1 : met[i]);
    return {
      goal,
      met: met[i],
      value: valueOf(goal, run),
      share,
      marks: marksFor(share, goal.weight),
      outOf: goal.weight
    };
  });
  const called = gradeCall(challenge, guess, result);
  // No more than there is: the table's sum comes out.
  const call = called && { ...called, lost: Math.min(called.lost, moveMarks({ goals })) };
  const marks = moveMarks({ goals }) - (call?.lost ?? 0);
  const figure = figureIn(figureOf(challenge), run, marks);
  const passed = marks >= PASS_MARK;
  return { marks, passed, done, goals, reeledFirst: reeledFirst(run), call, figure };
}

/** What a rod that is held still cannot do. */
const MADE: readonly WeightedGoal['kind'][] = ['travel', 'hops'];

/**
 * What the main goals earned. All of them are asked for, so they multiply; but where the distance or the hops
 * were made, something else that was not done leaves their part by nearness, which passes nothing.
 */
function doneOf({ goals }: Pick<Challenge, 'goals'>, met: readonly number[]): number {
  const main = goals.flatMap((goal, i) => (isMain(goal) ? [{ ...goal, met: met[i] }] : []));
  const all = main.reduce((product, one) => product * one.met, 1);
  const made = main.find(({ kind }) => MADE.includes(kind))?.met ?? 0;
  const sum = (of: (one: (typeof main)[number]) => number) =>
    main.reduce((s, one) => s + of(one), 0);
  const part = sum(({ weight, met }) => weight * met) / (sum(({ weight }) => weight) || 1);
  return Math.max(all, BY_NEARNESS * made * part);
}

/**
 * Runs a move, a hand's recorded one or any other, and grades it: the only grader, so that the same try
 * gets the same marks wherever it is graded. Throws ScenarioError for a move that cannot be made.
 */
export function gradeTry(challenge: Challenge, move: Move, call?: Guess | null): GradedRun {
  const result = simulate({ ...challenge.setup, move, hold_s: challenge.hold_s });
  return { result, grade: gradeRun(challenge, { move, result, call }) };
}

/** Whole marks; all of them within the limit only. */
function marksFor(share: number, weight: number): number {
  return share === 1 ? weight : Math.min(weight - 1, Math.round(share * weight));
}

/** A boat that drifts moves the bait of a rod that nobody touched. */
function isUntouched(challenge: Challenge, result: Result): boolean {
  const isDrifting = (challenge.setup.drift_m_s ?? 0) !== 0;
  return isDrifting && tipTravel(handRun(challenge, result)) < NO_MOVE_M;
}
