import { compute, keepAtHand } from '$lib/compute/browser';
import type { Challenge, Correction } from '$lib/scoring';

keepAtHand('correct');

/** Solved once a challenge, not once an id: homework may ask the same in another water. */
const solved = new WeakMap<Challenge, Promise<Correction | null>>();

/** The move that would have done it: a few dozen runs of the model, off the page. */
export function correctionOf(challenge: Challenge): Promise<Correction | null> {
  const before = solved.get(challenge);
  if (before) return before;
  const now = compute.ask('correct', challenge);
  solved.set(challenge, now);
  return now;
}
