import { simulate, type Move, type Result } from '../model';
import { gradeCall, type CallGrade } from './call';
import type { Challenge } from './challenge';
import { PASS_MARK } from './pass-mark';
import {
  figureIn,
  figureOf,
  goalProgressOf,
  isKept,
  isRestraint,
  shareOf,
  TOTAL_MARKS,
  valueOf,
  type WeightedGoal
} from './goals';
import type { Guess } from './guess';
import { handRun } from './hand-run';
import { NO_MOVE_M, tipTravel } from './run-measures';
import { runToGrade, type RunToGrade } from './run-to-grade';

export interface GoalGrade {
  goal: WeightedGoal;
  /** What the try reached, in the goal's own unit (see valueOf). */
  value: number;
  /** 0–1: how well the goal was met on its own. */
  met: number;
  /** 0–1, met × done for a restraint: 1 is full marks for this goal. */
  share: number;
  /** Whole marks, of `outOf`. */
  marks: number;
  outOf: number;
}

export interface Grade {
  /** 0–100: the sum of the goals' whole marks, less what a wrong call cost. */
  marks: number;
  passed: boolean;
  /** 0–1: how much was done of what was to be done. What a rod held still keeps counts by that part only. */
  done: number;
  goals: GoalGrade[];
  /** What was called of a try that was out of sight; null where no call was asked for. */
  call: CallGrade | null;
  /** What was reached of the task's figure, in its own unit (see figureOf); null where nothing was. */
  figure: number | null;
}

/**
 * The goals as a table shows them: what was left undone costs the goal that asks for it, and what was
 * kept meanwhile has full marks of the fewer that it could earn. The sums are those of the grade.
 */
export function shownMarks({ goals, done }: Grade): GoalGrade[] {
  if (done >= 1) return goals;
  const all = goals.map(({ goal }) => goal);
  const deed = deedOf(all);
  const shown = goals.map((one) => {
    if (!earnsByDone(one, all, deed)) return one;
    const could = Math.min(one.outOf - 1, Math.round(done * one.outOf));
    return { ...one, outOf: one.met === 1 ? could : Math.max(could, one.marks + 1) };
  });
  const [undone] = goals
    .filter((one) => !earnsByDone(one, all, deed))
    .sort((a, b) => b.outOf - b.marks - (a.outOf - a.marks));
  if (!undone) return goals;
  const rest = TOTAL_MARKS - shown.reduce((sum, { outOf }) => sum + outOf, 0);
  return shown
    .map((one) => (one === undone ? { ...one, outOf: one.outOf + rest } : one))
    .filter(({ outOf }) => outOf > 0);
}

/** Whether every figure came out as asked; a pass without that is close enough, and no more. */
export function isAsAsked({ goals, call }: Pick<Grade, 'goals' | 'call'>): boolean {
  return goals.every(({ met }) => met === 1) && (call === null || call.share === 1);
}

/** What the move alone is worth, whatever was called. */
export function moveMarks({ goals }: Pick<Grade, 'goals'>): number {
  return goals.reduce((sum, goal) => sum + goal.marks, 0);
}

/** A move and what came of it in the challenge's own water. */
export interface MadeRun {
  readonly move: Move;
  readonly result: Result;
  /** Undefined where no call was asked for, null where none was given. */
  readonly call?: Guess | null;
}

/** A run with its marks: what the words, the ruler and the record are views of. */
export interface GradedRun {
  readonly result: Result;
  readonly grade: Grade;
}

/** Marks for what the bait did, and for what was called of it. The formula is in docs/scoring.md. */
export function gradeRun(challenge: Challenge, { move, result, call: guess }: MadeRun): Grade {
  const run = runToGrade(challenge.setup, move, result);
  const done = isUntouched(challenge, result) ? 0 : doneShare(challenge, run);
  const deed = deedOf(challenge.goals);
  const goals = challenge.goals.map((goal): GoalGrade => {
    const met = shareOf(goal, run);
    const value = valueOf(goal, run);
    const share = met * (earnsByDone({ goal, value }, challenge.goals, deed) ? done : 1);
    return {
      goal,
      met,
      value,
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
  return { marks, passed: marks >= PASS_MARK, done, goals, call, figure };
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

/** The goal without which the others are worth nothing: a rod lowered after no hop is lowered for nothing. */
function deedOf(goals: readonly WeightedGoal[]): WeightedGoal | undefined {
  return goals.find(({ kind }) => kind === 'hops');
}

function earnsByDone(
  { goal, value }: Pick<GoalGrade, 'goal' | 'value'>,
  all: readonly WeightedGoal[],
  deed?: WeightedGoal
): boolean {
  return deed ? goal !== deed : isKept(goal, value) || isPaceOfTravel(goal, all);
}

/** Where a distance is asked, its pace is how it is gone and no deed beside it: half the way is half done. */
function isPaceOfTravel({ kind }: WeightedGoal, all: readonly WeightedGoal[]): boolean {
  return kind === 'pace' && all.some((one) => one.kind === 'travel');
}

/** A boat that drifts moves the bait of a rod that nobody touched. */
function isUntouched(challenge: Challenge, result: Result): boolean {
  const isDrifting = (challenge.setup.drift_m_s ?? 0) !== 0;
  return isDrifting && tipTravel(handRun(challenge, result)) < NO_MOVE_M;
}

/** Keeping still is no achievement where something was to be done; where nothing was, it is all. */
function doneShare({ goals }: Challenge, run: RunToGrade): number {
  const deed = deedOf(goals);
  const aims = deed
    ? [deed]
    : goals.filter((goal) => !isRestraint(goal) && !isPaceOfTravel(goal, goals));
  return aims.length === 0 ? 1 : Math.max(...aims.map((goal) => goalProgressOf(goal, run)));
}
