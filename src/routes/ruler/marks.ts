import { markOf, type Mark, type StoredTry } from '$lib/practice';
import type { Challenge } from '$lib/scoring';

/** Tries run again in one go: about a tenth of a second, so that the page goes on answering. */
const IN_ONE_GO = 8;
/** Older tries than this many say nothing of the hand as it is, nor of its trend. */
const MOST_TRIES = 120;

/** Tries never change, so each is measured once while the site is open. */
const measured = new Map<string, Mark | null>();

/** The try on the ruler, or null where its challenge asks for no distance. */
export function markOnce(made: StoredTry, challenge: Challenge): Mark | null {
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
  const left = tries.slice(-MOST_TRIES);
  const found: Mark[] = [];
  let timer: ReturnType<typeof setTimeout>;
  const next = () => {
    for (const made of left.splice(0, IN_ONE_GO)) {
      const challenge = find(made.challenge);
      const mark = challenge && markOnce(made, challenge);
      if (mark) found.push(mark);
    }
    onfound([...found], left.length === 0);
    if (left.length > 0) timer = setTimeout(next);
  };
  timer = setTimeout(next);
  return () => clearTimeout(timer);
}
