import { isAsAsked, moveMarks, PASS_MARK, type Grade } from '$lib/scoring';

/** Whether a try passed: a pass whose figure lies outside what was asked is close enough, and no more. */
export function verdictText(grade: Pick<Grade, 'passed' | 'goals' | 'call'>): string {
  if (grade.passed) return isAsAsked(grade) ? 'Passed' : 'Close enough';
  return moveMarks(grade) >= PASS_MARK ? 'Not yet: your call' : `Not yet: you need ${PASS_MARK}`;
}
