import { markOf, type Mark, type StoredTry } from '$lib/practice';
import type { Challenge } from '$lib/scoring';
import { littleByLittle } from '$lib/app/try';

/** Older tries than this many say nothing of the hand as it is, nor of its trend. */
const MOST_TRIES = 120;

/** Tries never change, so each is measured once while the site is open. */
const measured = new Map<string, Mark | null>();

/** The try on the ruler, or null where its challenge asks for no distance. */
function markOnce(made: StoredTry, challenge: Challenge): Mark | null {
  const before = measured.get(made.id);
  if (before !== undefined) return before;
  const mark = markOf(made, challenge);
  measured.set(made.id, mark);
  return mark;
}

/**
 * Measures the last tries a few at a time and hands over what there is so far. @returns how to stop.
 */
export function marksSoFar(
  tries: readonly StoredTry[],
  find: (id: string) => Challenge | undefined,
  onfound: (marks: readonly Mark[], isAll: boolean) => void
): () => void {
  const found: Mark[] = [];
  const measure = (made: StoredTry) => {
    const challenge = find(made.challenge);
    const mark = challenge && markOnce(made, challenge);
    if (mark) found.push(mark);
  };
  return littleByLittle(tries.slice(-MOST_TRIES), measure, (isAll) => onfound([...found], isAll));
}
