import { isMain } from './goals';
import type { Grade, GoalGrade } from './grade';
import { TOTAL_MARKS } from './pass-mark';

/** A goal, and what it took from 100 marks. */
export interface GoalCost extends GoalGrade {
  /** Whole marks; none where it was met, and only there. With the other goals’ it is what the move lacks of 100. */
  readonly cost: number;
  /** The most that it ever costs, the same for every try: all of them for what was to be done, else its weight. */
  readonly most: number;
}

/**
 * What each goal cost. A main goal takes from all 100, each by how far it was missed; a side condition
 * then takes its part of what they left, so that the sum is the grade's.
 */
export function costsOf({ goals, done }: Pick<Grade, 'goals' | 'done'>): GoalCost[] {
  const sides = goals.map((one) => (isMain(one.goal) ? 0 : sideCost(one, done)));
  const left = TOTAL_MARKS - goals.reduce((sum, { marks }, i) => sum + marks + sides[i], 0);
  const mains = mainCosts(goals, left);
  return goals.map((one, i) => ({
    ...one,
    cost: sides[i] + mains[i],
    most: isMain(one.goal) ? TOTAL_MARKS : one.outOf
  }));
}

/** What it could have earned beside the main goals, less what it did. */
function sideCost({ met, marks, outOf }: GoalGrade, done: number): number {
  return met === 1 ? 0 : Math.max(1, Math.round(done * outOf) - marks);
}

/** Each that was missed by its weight and its miss, and the odd mark of rounding where most was missed. */
function mainCosts(goals: readonly GoalGrade[], lost: number): number[] {
  const misses = goals.map(({ goal, met, outOf }) => (isMain(goal) ? outOf * (1 - met) : 0));
  const all = misses.reduce((sum, miss) => sum + miss, 0);
  const costs = misses.map((miss) => (miss > 0 ? Math.max(1, Math.floor((lost * miss) / all)) : 0));
  const odd = lost - costs.reduce((sum, cost) => sum + cost, 0);
  const worst = misses.indexOf(Math.max(...misses));
  return costs.map((cost, i) => (i === worst && all > 0 ? cost + odd : cost));
}
