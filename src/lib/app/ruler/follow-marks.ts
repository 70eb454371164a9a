import type { StoredTry } from '$lib/wire';
import type { MarksSoFar } from './marks';

/**
 * Hands over the marks of a learner's tries, of any lesson or drill, as far as they are known. All
 * lessons and the grader come along only for a hand that has tried something. @returns how to stop.
 */
export function followMarks(
  tries: readonly StoredTry[],
  onfound: (found: MarksSoFar) => void
): () => void {
  if (tries.length === 0) {
    onfound({ marks: [], isAll: true, leftOut: 0 });
    return () => {};
  }
  let isStopped = false;
  let stop = () => {
    isStopped = true;
  };
  void Promise.all([import('./marks'), import('$lib/course/of-any-lesson')]).then(
    ([{ marksSoFar }, { challengeOfAny }]) => {
      if (!isStopped) stop = marksSoFar(tries, challengeOfAny, onfound);
    }
  );
  return () => stop();
}
