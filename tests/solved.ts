import { solveCorrection, type Challenge, type Correction } from '../src/lib/scoring';

const known = new WeakMap<Challenge, Correction | null>();

/** What would have been right of a challenge of the course: it takes many runs, and several files ask for it. */
export function solved(challenge: Challenge): Correction | null {
  const correction = known.has(challenge)
    ? (known.get(challenge) ?? null)
    : solveCorrection(challenge);
  known.set(challenge, correction);
  return correction;
}
