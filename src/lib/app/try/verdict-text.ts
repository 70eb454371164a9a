import { isAsAsked, moveMarks, PASS_MARK, type Grade } from '$lib/scoring';

/**
 * Whether a try passed: a pass whose figure lies outside what was asked is close enough, and no more.
 * @param isAtStake whether it may pass: of a half seen challenge one in sight is for looking only
 */
export function verdictText(
  grade: Pick<Grade, 'passed' | 'goals' | 'call'>,
  isAtStake = true
): string {
  if (grade.passed && !isAtStake) return 'Right, in sight. Now do it hidden';
  if (grade.passed) return isAsAsked(grade) ? 'Passed' : 'Close enough';
  return moveMarks(grade) >= PASS_MARK ? 'Not yet: your call' : `Not yet: you need ${PASS_MARK}`;
}
