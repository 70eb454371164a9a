import { isAsAsked, PASS_MARK, type Grade } from '$lib/scoring';

/** Whether a try passed: a pass whose figure lies outside what was asked is close enough, and no more. */
export function verdictText(grade: Pick<Grade, 'passed' | 'goals'>): string {
  if (!grade.passed) return `Not yet: you need ${PASS_MARK}`;
  return isAsAsked(grade) ? 'Passed' : 'Close enough';
}
