import type { Move, Result } from '../model';
import type { CallGrade } from './call';
import { TOTAL_MARKS } from './pass-mark';
import { isMain, type ReeledFirst, type WeightedGoal } from './goals';
import type { Guess } from './guess';

export interface GoalGrade {
  goal: WeightedGoal;
  /** What the try reached, in the goal's own unit (see valueOf). */
  value: number;
  /** 0–1: how well the goal was met on its own. */
  met: number;
  /** 0–1, what the main goals earned, times met for a side condition: 1 is full marks for this goal. */
  share: number;
  /** Whole marks, of `outOf`. */
  marks: number;
  outOf: number;
}

export interface Grade {
  /** 0–100: the sum of the goals' whole marks, less what a wrong call cost. */
  marks: number;
  passed: boolean;
  /** 0–1: what the main goals earned together: every goal earns by it. */
  done: number;
  goals: GoalGrade[];
  reeledFirst: ReeledFirst;
  /** What was called of a try that was out of sight; null where no call was asked for. */
  call: CallGrade | null;
  /** What was reached of the task's figure, in its own unit (see figureOf); null where nothing was. */
  figure: number | null;
}

/** What a goal cost, marks, had the others been met. */
export function marksLost({ goal, met }: Pick<GoalGrade, 'goal' | 'met'>): number {
  return (isMain(goal) ? TOTAL_MARKS : goal.weight) * (1 - met);
}

/** Whether every figure came out as asked; a pass without that is not a clean one. */
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
