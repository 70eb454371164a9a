import type { StoredTry } from '$lib/practice';
import { gradeTry, type Challenge, type Grade } from '$lib/scoring';
import type { Try } from '$lib/sandbox';

/** A stored try, run and graded again. */
export interface GradedTry {
  readonly stored: StoredTry;
  readonly made: Try;
  readonly grade: Grade;
}

/** Tries never change, so each is graded once while the page is open. */
const graded = new Map<string, GradedTry>();

/** The tries at a challenge, oldest first, graded from their rod input. */
export function gradedTries(challenge: Challenge, tries: readonly StoredTry[]): GradedTry[] {
  return tries
    .filter((stored) => stored.challenge === challenge.id)
    .map((stored) => {
      const before = graded.get(stored.id);
      if (before) return before;
      const { result, grade } = gradeTry(challenge, stored.input);
      const now = { stored, made: { input: stored.input, result }, grade };
      graded.set(stored.id, now);
      return now;
    });
}

/** Best marks by challenge id, of those that were tried. */
export function bestMarks(
  challenges: readonly Challenge[],
  tries: readonly StoredTry[]
): Map<string, number> {
  const best = new Map<string, number>();
  for (const challenge of challenges) {
    const marks = gradedTries(challenge, tries).map(({ grade }) => grade.marks);
    if (marks.length > 0) best.set(challenge.id, Math.max(...marks));
  }
  return best;
}
