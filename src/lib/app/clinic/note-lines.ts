import type { ClinicSummary } from '$lib/wire';

/** A sheet with one question, one round and two drills has room for so many lines of 8.5 mm. */
const MOST = { summary: 9, handout: 8 };
/** What each more of them takes of these lines; looked at on letter, the lower of the two papers. */
const A_QUESTION = 2;
const A_ROUND = 2;
/** Sheets of more drills are full. */
const MOST_DRILLS = 2;

/** How many ruled lines fill a printed sheet of a clinic without beginning a second. */
export function noteLines(
  { asked, hands, drills }: Pick<ClinicSummary, 'asked' | 'hands' | 'drills'>,
  paper: keyof typeof MOST
): number {
  if (drills.length > MOST_DRILLS) return 0;
  const questions = paper === 'summary' ? A_QUESTION * Math.max(0, asked.length - 1) : 0;
  const rounds = A_ROUND * Math.max(0, hands.length - 1);
  return Math.max(0, MOST[paper] - questions - rounds);
}
