import { guessOf, isTold, measuredOf, planOf, type Phase, type TryPlan } from '$lib/practice';
import { isCallTheFix, type Challenge, type Guess } from '$lib/scoring';
import type { RodInput } from '$lib/model';
import { gradedNow, type TryRun } from '$lib/app/try';
import type { KeptGuess, StoredTry } from '$lib/wire';

/** A try of a series with all that is said of it. */
export interface Shown {
  phase: Phase;
  graded: TryRun;
  isTold: boolean;
  /** How it was made. */
  plan: TryPlan;
  guess: Guess | null;
}

/** A try as it is kept: the hand's move and what was said before it was told. */
export type MadeTry = KeptGuess & Pick<StoredTry, 'input'>;

/** What is said of the `n`-th try of a phase, from 0. Null where today's model cannot run it. */
export function shownOf(
  challenge: Challenge,
  phase: Phase,
  n: number,
  made: MadeTry
): Shown | null {
  const graded = gradedNow(challenge, made);
  return (
    graded && {
      phase,
      graded,
      isTold: isToldOf(phase, n, graded),
      plan: planOf(phase, n),
      guess: guessOf(made, challenge)
    }
  );
}

/** A try out of sight that was not as asked, or called wrong, is told of, near as it may have been. */
function isToldOf(phase: Phase, n: number, graded: TryRun): boolean {
  const measured = measuredOf(graded.challenge, graded);
  if (!measured) return phase !== 'kept';
  const isRight = measured.isRight && !isCallTheFix(graded.grade);
  return isTold(phase, n, measured.miss) || (phase === 'unseen' && !isRight);
}

/** Whether both are one hand's move, to the last bit. */
export function isSameInput(a: RodInput, b: RodInput): boolean {
  const parts = ['elevation_deg', 'azimuth_deg', 'line_in_m'] as const;
  return parts.every((part) => {
    const [one, other] = [a[part], b[part]].map((samples) => [samples].flat());
    return one.length === other.length && one.every((sample, i) => sample === other[i]);
  });
}

/** "Try 2 of 8", which no line breaks, or beyond those asked "Try 9, one more than asked" */
export function countText(n: number, of: number): string {
  if (n <= of) return `Try\u00a0${n}\u00a0of\u00a0${of}`;
  return n === of + 1 ? `Try ${n}, one more than asked` : `Try ${n}, ${n - of} more than asked`;
}
