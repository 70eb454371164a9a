import {
  guessOf,
  isTold,
  measuredOf,
  type KeptGuess,
  type Phase,
  type StoredTry
} from '$lib/practice';
import { gradeTry, type Challenge, type Guess } from '$lib/scoring';

/** A try of a series with all that is said of it. */
export interface Shown {
  challenge: Challenge;
  phase: Phase;
  input: StoredTry['input'];
  graded: ReturnType<typeof gradeTry>;
  isTold: boolean;
  guess: Guess | null;
}

/** A try as it is kept: the hand's move and what was said before it was told. */
export type MadeTry = KeptGuess & Pick<StoredTry, 'input'>;

/** What is said of the `n`-th try of a phase, from 0. Throws ScenarioError for what is no rod input. */
export function shownOf(
  challenge: Challenge,
  phase: Phase,
  n: number,
  { input, ...kept }: MadeTry
): Shown {
  const graded = gradeTry(challenge, input);
  return {
    challenge,
    phase,
    input,
    graded,
    isTold: isToldOf(challenge, phase, n, graded),
    guess: guessOf(kept, challenge)
  };
}

/** A try out of sight that was not as asked is told of, near as it may have been. */
function isToldOf(challenge: Challenge, phase: Phase, n: number, graded: Shown['graded']): boolean {
  const measured = measuredOf(challenge, graded);
  if (!measured) return phase !== 'kept';
  return isTold(phase, n, measured.miss) || (phase === 'unseen' && !measured.isRight);
}

/** "Try 2 of 8", or beyond those asked "Try 9, one more than asked" */
export function countText(n: number, of: number): string {
  if (n <= of) return `Try ${n} of ${of}`;
  return n === of + 1 ? `Try ${n}, one more than asked` : `Try ${n}, ${n - of} more than asked`;
}
