import { findChallenge } from '$lib/course';
import { errorOf, type ScheduledTry, type StoredTry } from '$lib/practice';
import { markOnce } from './marks';

/** How the schedule reads a stored try; null for one that was made in a lesson or has no distance. */
export function scheduled(made: StoredTry): ScheduledTry | null {
  // No lesson: what was made in one is no practice.
  const challenge = made.phase && findChallenge(made.challenge, []);
  const mark = challenge && markOnce(made, challenge);
  if (!mark || !made.phase) return null;
  const { phase, at } = made;
  return { phase, at_ms: Date.parse(at), error: errorOf(mark), isPaceRight: mark.isPaceRight };
}
