import { errorOf, type ScheduledTry, type StoredTry } from '$lib/practice';
import type { Challenge } from '$lib/scoring';
import { markOnce } from './marks';

/** How the schedule reads a stored try; null for one that was made in a lesson or has no distance. */
export function scheduled(made: StoredTry, challenge: Challenge): ScheduledTry | null {
  const mark = made.phase && markOnce(made, challenge);
  if (!mark || !made.phase) return null;
  const { phase, at } = made;
  return { phase, at_ms: Date.parse(at), error: errorOf(mark), isPaceRight: mark.isPaceRight };
}
