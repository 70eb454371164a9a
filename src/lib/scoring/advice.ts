import type { Move } from '../model';
import type { Challenge } from './challenge';
import type { Correction } from './correction';
import { moveOfSteps, spokenSteps, type SpokenStep } from './spoken-move';

/** The move that is advised, in the steps in which it is said. */
export interface AdvisedMove {
  steps: readonly SpokenStep[];
  move: Move;
}

/**
 * What to do instead: the solved turn where there is one, else the challenge's own reference, both as
 * they are said. Null where the right moment decides and no count can be given.
 */
export function advisedMove(
  challenge: Challenge,
  correction?: Correction | null
): AdvisedMove | null {
  if (challenge.goals.some(({ kind }) => kind === 'strike')) return null;
  const steps = spokenSteps(challenge, correction?.move ?? challenge.reference);
  return steps && { steps, move: moveOfSteps(challenge, steps) };
}
