import { TOTAL_MARKS, type GoalCost } from '$lib/scoring';

/** What was kept adds nothing to a try that missed: it only costs nothing. */
export function costText(cost: number, most: number): string {
  return `costs ${cost} of ${most}`;
}

/**
 * Why a side condition that was wholly missed can cost less than its most, and a wrong call never does; ''
 * where all are asked alike.
 * @param isCalled whether a call was asked for
 */
export function costNote(goals: readonly Pick<GoalCost, 'most'>[], isCalled: boolean): string {
  const isLeft = new Set(goals.map(({ most }) => most === TOTAL_MARKS)).size > 1;
  if (!isLeft) return '';
  const goalsFirst = 'What’s out of 100 counts first. The rest takes its part of what’s left.';
  return isCalled ? `${goalsFirst} A wrong call comes off last, whole.` : goalsFirst;
}
