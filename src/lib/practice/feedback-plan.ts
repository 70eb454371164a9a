import { TOLD_ONE_IN, TOLD_OUTSIDE, type Phase } from './design';

/** How one try of a series is made and what is said after it. */
export interface TryPlan {
  /** Whether the bait is hidden while the hand moves. */
  isHidden: boolean;
  /** Whether the learner says how far the bait went before it is shown. */
  asksGuess: boolean;
}

/** The `n`-th try of a phase, from 0. Half seen tries are visible and hidden in turn. */
export function planOf(phase: Phase, n: number): TryPlan {
  const isHidden = phase === 'half_seen' ? n % 2 === 1 : phase !== 'seen';
  // Of what was watched there is nothing to guess, and of a check nothing is told.
  return { isHidden, asksGuess: isHidden && phase !== 'kept' };
}

/**
 * Whether the learner is told what the bait did: always, then always in sight and every other time
 * out of sight, the first of these included, then only outside a band, and in a check never. `error` is a part of the distance meant, see errorOf.
 */
export function isTold(phase: Phase, n: number, error: number): boolean {
  switch (phase) {
    case 'seen':
      return true;
    case 'half_seen':
      return !planOf(phase, n).isHidden || Math.floor(n / 2) % TOLD_ONE_IN === 0;
    case 'unseen':
      return Math.abs(error) > bandAt(n);
    case 'kept':
      return false;
  }
}

/** An error inside this part of the target goes unsaid in the `n`-th unseen try. */
function bandAt(n: number): number {
  return n < TOLD_OUTSIDE.fromTry ? TOLD_OUTSIDE.first : TOLD_OUTSIDE.later;
}
