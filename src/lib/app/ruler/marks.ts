import { challengeOfTry, markOf, type Mark } from '$lib/practice';
import type { StoredTry } from '$lib/wire';
import type { Challenge } from '$lib/scoring';
import { runTries, tryRuns } from '$lib/app/try';

/** Older tries than this many say nothing of the hand as it is, nor of its trend. */
const MOST_TRIES = 120;

/** What is known of a hand so far. */
export interface MarksSoFar {
  /** Oldest first. */
  marks: readonly Mark[];
  isAll: boolean;
  /** How many tries today's model cannot run. */
  leftOut: number;
}

/** Puts the last tries on the ruler and hands over what there is so far. @returns how to stop. */
export function marksSoFar(
  tries: readonly StoredTry[],
  find: (id: string) => Challenge | undefined,
  onfound: (found: MarksSoFar) => void
): () => void {
  const last = tries.slice(-MOST_TRIES).flatMap((made) => {
    const challenge = challengeOfTry(made, find);
    return challenge ? [{ challenge, made }] : [];
  });
  return runTries(last, (isAll) => {
    const known = last.map((one) => ({ ...one, graded: tryRuns.known(one.made) }));
    onfound({
      isAll,
      marks: known.flatMap(({ made, challenge, graded }) =>
        graded ? (markOf(made, challenge, graded) ?? []) : []
      ),
      leftOut: known.filter(({ graded }) => graded === null).length
    });
  });
}
