import { taskIdOf } from '$lib/course';
import { tryRuns, type TryRun } from './try-runs';
import type { StoredTry } from '$lib/wire';

/** A stored try and all that came of it. */
export interface GradedTry {
  readonly stored: StoredTry;
  readonly graded: TryRun;
}

/** What is known of a stored try, see TryRuns. */
export function gradedTry(stored: StoredTry): GradedTry | null | undefined {
  const graded = tryRuns.known(stored);
  return graded && { stored, graded };
}

/** Best marks by the id of the challenge, of those that were tried. */
export function bestOf(tries: readonly GradedTry[]): Map<string, number> {
  const best = new Map<string, number>();
  for (const { stored, graded } of tries) {
    const task = taskIdOf(stored.challenge);
    best.set(task, Math.max(graded.grade.marks, best.get(task) ?? 0));
  }
  return best;
}
