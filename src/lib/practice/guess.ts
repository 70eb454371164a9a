import { isBlank, tryNamed } from '../course';
import { askedOf, type Challenge, type Guess } from '../scoring';
import type { KeptGuess, StoredTry } from '../wire';

export function keptGuess(guess: Guess | null): KeptGuess {
  switch (guess?.kind) {
    case 'travel': {
      const { travel_m: guess_m, lifted: guess_lifted } = guess;
      return guess_lifted === undefined ? { guess_m } : { guess_m, guess_lifted };
    }
    case 'height':
      return { guess_m: guess.height_m };
    case 'down':
      return { guess_down: guess.isDown };
    default:
      return {};
  }
}

/** The guess that was kept with a try at this challenge, or null. */
export function guessOf(kept: KeptGuess, challenge: Challenge): Guess | null {
  const { guess_m, guess_lifted: lifted, guess_down } = kept;
  if (guess_down !== undefined) return { kind: 'down', isDown: guess_down };
  if (guess_m === undefined) return null;
  if (askedOf(challenge) === 'height') return { kind: 'height', height_m: guess_m };
  return { kind: 'travel', travel_m: guess_m, ...(lifted === undefined ? {} : { lifted }) };
}

/**
 * Whether a try may pass its task: of a half seen one those out of sight do, and they were called; of one
 * about bites those in which something bit.
 */
export function isAtStake(
  task: Challenge,
  { challenge, guess_m, guess_down }: KeptGuess & Pick<StoredTry, 'challenge'>
): boolean {
  const met = tryNamed(challenge, [task]);
  if (met && isBlank(met)) return false;
  return task.visibility !== 'half_seen' || guess_m !== undefined || guess_down !== undefined;
}

/** The same as the grader asks for it: undefined where none was kept, since none was asked for. */
export function callOf(kept: KeptGuess, challenge: Challenge): Guess | undefined {
  return guessOf(kept, challenge) ?? undefined;
}
