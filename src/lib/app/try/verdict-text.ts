import { isAsAsked, isCallTheFix, PASS_MARK, type Grade } from '$lib/scoring';

/**
 * Whether a try passed, and whether all of it came out as asked: a bit quick, or off the bottom for a moment,
 * it passes, and is not clean.
 * @param isAtStake whether it may pass: of a half seen challenge one in sight is for looking only, and a cast
 * without a bite shows no hook set
 */
export function verdictText(
  grade: Pick<Grade, 'passed' | 'goals' | 'call'>,
  isAtStake = true
): string {
  if (!isMarked(grade, isAtStake)) return 'Not counted: you could see it.';
  if (grade.passed && !isAtStake) return 'Right: nothing bit. Cast again';
  if (grade.passed) return isAsAsked(grade) ? 'Passed' : 'Passed, but not clean';
  return isCallTheFix(grade) ? 'Not yet: your call' : `Not yet: you need ${PASS_MARK}`;
}

/** Whether its marks are told: of a look they count for nothing. */
export function isMarked(grade: Pick<Grade, 'goals'>, isAtStake: boolean): boolean {
  return isAtStake || asksBite(grade);
}

function asksBite({ goals }: Pick<Grade, 'goals'>): boolean {
  return goals.some(({ goal }) => goal.kind === 'strike');
}
