import { tryRuns, type GradedRun } from './try-runs';
import type { StoredTry } from '$lib/wire';

/** A stored try and all that came of it. */
export interface GradedTry {
  readonly stored: StoredTry;
  readonly graded: GradedRun;
}

/** What is known of a stored try, see TryRuns. */
export function gradedTry(stored: StoredTry): GradedTry | null | undefined {
  const graded = tryRuns.known(stored);
  return graded && { stored, graded };
}

/** Best marks by challenge id, of those that were tried. */
export function bestOf(tries: readonly GradedTry[]): Map<string, number> {
  const best = new Map<string, number>();
  for (const { stored, graded } of tries) {
    best.set(stored.challenge, Math.max(graded.grade.marks, best.get(stored.challenge) ?? 0));
  }
  return best;
}
