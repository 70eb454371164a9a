import { TOTAL_MARKS, wholeLost, type CallGrade, type GoalCost } from '$lib/scoring';

/** What was kept adds nothing to a try that missed: it only costs nothing. */
export function costText(cost: number, most: number): string {
  return `costs ${cost} of ${most}`;
}

/**
 * Why a side condition that was wholly missed can cost less than its most, and a wrong call only where the
 * move left less; '' where nothing is to be told.
 * @param call what was called, if a call was asked for
 */
export function costNote(
  goals: readonly Pick<GoalCost, 'most'>[],
  call: Pick<CallGrade, 'lost' | 'share'> | null
): string {
  const isLeft = new Set(goals.map(({ most }) => most === TOTAL_MARKS)).size > 1;
  const notes = isLeft
    ? ['What’s out of 100 counts first. The rest takes its part of what’s left.']
    : [];
  if (call && call.lost < wholeLost(call))
    notes.push('A wrong call comes off last: only what’s left.');
  else if (call && isLeft) notes.push('A wrong call comes off last, whole.');
  return notes.join(' ');
}
