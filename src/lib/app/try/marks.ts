import { ScenarioError } from '$lib/model';
import type { StoredTry } from '$lib/practice';
import type { Try } from '$lib/sandbox';
import { gradeTry, type Challenge, type Grade } from '$lib/scoring';

/** A stored try, run and graded again. */
export interface GradedTry {
  readonly stored: StoredTry;
  readonly made: Try;
  readonly grade: Grade;
}

/** Tries never change, so each is run once while the page is open. */
const graded = new Map<string, GradedTry | null>();

/** What is known of a try: undefined when it has not been graded yet. */
export function knownMarks(stored: StoredTry): GradedTry | null | undefined {
  return graded.get(stored.id);
}

/** Runs and grades a try. Null for one that today's model cannot run; it stays in the record. */
export function marksFor(challenge: Challenge, stored: StoredTry): GradedTry | null {
  const marks = knownMarks(stored) ?? run(challenge, stored);
  graded.set(stored.id, marks);
  return marks;
}

function run(challenge: Challenge, stored: StoredTry): GradedTry | null {
  try {
    const { result, grade } = gradeTry(challenge, stored.input);
    return { stored, made: { input: stored.input, result }, grade };
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}

/** Best marks by challenge id, of those that were tried. */
export function bestOf(tries: readonly GradedTry[]): Map<string, number> {
  const best = new Map<string, number>();
  for (const { stored, grade } of tries) {
    best.set(stored.challenge, Math.max(grade.marks, best.get(stored.challenge) ?? 0));
  }
  return best;
}
