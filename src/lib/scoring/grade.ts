import { simulate, type Result, type RodInput } from '../model';
import { PASS_MARK, type Challenge, type WeightedGoal } from './challenge';
import { isRestraint, progressOf, shareOf, valueOf } from './goal';

export interface GoalGrade {
  goal: WeightedGoal;
  /** What the try reached, in the goal's own unit (see valueOf). */
  value: number;
  /** 0–1: 1 is full marks for this goal. */
  share: number;
  /** Whole marks, of `outOf`. */
  marks: number;
  outOf: number;
}

export interface Grade {
  /** 0–100: the sum of the goals' whole marks. */
  marks: number;
  passed: boolean;
  /** 0–1: how much was done of what was to be done. What a rod held still keeps counts by that part only. */
  done: number;
  goals: GoalGrade[];
}

/** Goals that earned less because not all was done; none where it was. */
export function heldBack({ done, goals }: Grade): GoalGrade[] {
  return Math.round(done * 100) < 100 ? goals.filter(({ goal }) => isRestraint(goal)) : [];
}

/** Marks for what the bait did. The formula is in docs/scoring.md. */
export function gradeResult(challenge: Challenge, result: Result): Grade {
  const done = doneShare(challenge, result);
  const goals = challenge.goals.map((goal): GoalGrade => {
    const share = shareOf(goal, result) * (isRestraint(goal) ? done : 1);
    return {
      goal,
      value: valueOf(goal, result),
      share,
      marks: Math.round(share * goal.weight),
      outOf: goal.weight
    };
  });
  const marks = goals.reduce((sum, goal) => sum + goal.marks, 0);
  return { marks, passed: marks >= PASS_MARK, done, goals };
}

/**
 * Runs the hand's recorded move and grades it: the only grader, so that the same try gets the same
 * marks wherever it is graded. Throws ScenarioError for an input that is no rod input.
 */
export function gradeTry(challenge: Challenge, input: RodInput): { result: Result; grade: Grade } {
  const result = simulate({ ...challenge.setup, move: input, hold_s: challenge.hold_s });
  return { result, grade: gradeResult(challenge, result) };
}

/** Keeping still is no achievement where something was to be done; where nothing was, it is all. */
function doneShare({ goals }: Challenge, result: Result): number {
  const active = goals.filter((goal) => !isRestraint(goal));
  return active.length === 0 ? 1 : Math.max(...active.map((goal) => progressOf(goal, result)));
}
