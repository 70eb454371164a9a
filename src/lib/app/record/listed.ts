import { allLessons, findChallenge } from '$lib/course';
import { challengeOfTry } from '$lib/practice';
import { keptMarks, type KeptMarks, type StoredTry } from '$lib/wire';
import type { Challenge } from '$lib/scoring';
import { tryRuns, type TryRun } from '$lib/app/try';

const lessons = allLessons();

/** A try as the record lists it. */
export interface ListedTry {
  stored: StoredTry;
  title: string;
  challenge: Challenge | undefined;
  graded: TryRun | null | undefined;
  /** Null as long as there are no marks. */
  kept: KeptMarks | null;
  /** Why there is nothing to show; empty where there is, or where the model is still at it. */
  why: string;
}

/** A drill makes its challenge from the id, and some run the model for it: once while the page is open. */
const found = new Map<string, Challenge | undefined>();

/** The challenge of a lesson or of a drill, in its own gear; undefined where none has that id now. */
export function challengeNamed(id: string): Challenge | undefined {
  if (!found.has(id)) found.set(id, findChallenge(id, lessons));
  return found.get(id);
}

/** The try with what is known of it so far. */
export function listed(stored: StoredTry): ListedTry {
  const challenge = challengeOfTry(stored, challengeNamed);
  const graded = tryRuns.known(stored);
  const why = !challenge
    ? 'This challenge is gone, so the try can’t be run again.'
    : graded === null
      ? 'Today’s model can’t run this try.'
      : '';
  const kept = keptMarks(stored, graded?.grade ?? null);
  return { stored, title: challenge?.title ?? stored.challenge, challenge, graded, kept, why };
}
