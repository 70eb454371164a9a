import type { Challenge } from '$lib/scoring';
import { tryRuns, type MadeTry } from './try-runs';

/** A stored try and the challenge it was made at. */
export interface TryToRun {
  readonly challenge: Challenge;
  readonly made: MadeTry;
}

/** The page is let go on after so long, ms: two runs of the model, and less than a hand notices. */
const SLICE_MS = 30;

/**
 * Runs the tries that are not known yet, in this order and in slices, and tells after each slice
 * whether that was all. @returns how to stop.
 */
export function runTries(tries: readonly TryToRun[], tell: (isAll: boolean) => void): () => void {
  const left = tries.filter(({ made }) => tryRuns.known(made) === undefined).reverse();
  let timer: ReturnType<typeof setTimeout>;
  const next = () => {
    const ends_ms = performance.now() + SLICE_MS;
    while (left.length > 0 && performance.now() < ends_ms) {
      const { challenge, made } = left.pop() as TryToRun;
      tryRuns.of(challenge, made);
    }
    tell(left.length === 0);
    if (left.length > 0) timer = setTimeout(next);
  };
  next();
  return () => clearTimeout(timer);
}
