import { askedOf, type Challenge, type Guess } from '../scoring';
import type { StoredTry } from './record';

/** A guess as it is kept with its try. */
export type KeptGuess = Pick<StoredTry, 'guess_m' | 'guess_down'>;

export function keptGuess(guess: Guess | null): KeptGuess {
  switch (guess?.kind) {
    case 'travel':
      return { guess_m: guess.travel_m };
    case 'height':
      return { guess_m: guess.height_m };
    case 'down':
      return { guess_down: guess.isDown };
    default:
      return {};
  }
}

/** The guess that was kept with a try at this challenge, or null. */
export function guessOf({ guess_m, guess_down }: KeptGuess, challenge: Challenge): Guess | null {
  if (guess_down !== undefined) return { kind: 'down', isDown: guess_down };
  if (guess_m === undefined) return null;
  return askedOf(challenge) === 'height'
    ? { kind: 'height', height_m: guess_m }
    : { kind: 'travel', travel_m: guess_m };
}
