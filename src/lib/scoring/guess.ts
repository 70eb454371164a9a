import type { Result } from '../model';
import type { Challenge } from './challenge';
import { formatLength, type Units } from './display';
import { waitAfterTouch } from './goals/tip-measures';

/** What a learner can say of a try before it is shown, by what the try is for. */
export type GuessQuantity = 'travel' | 'height' | 'down';

/** What the learner says the bait did, before it is shown. */
export type Guess =
  /** How far it went, towards the angler. */
  | { kind: 'travel'; travel_m: number; lifted?: boolean }
  /** How high it rose off the bottom, at most. */
  | { kind: 'height'; height_m: number }
  /** Whether it lay on the bottom when the rod first moved. */
  | { kind: 'down'; isDown: boolean };

/** How far it went can be said of any try; hops and falls ask what matters there. */
export function askedOf({ goals }: Pick<Challenge, 'goals'>): GuessQuantity {
  const has = (kind: string) => goals.some((goal) => goal.kind === kind);
  if (has('travel')) return 'travel';
  if (has('hops')) return 'height';
  return has('bottom_first') ? 'down' : 'travel';
}

/** What was said beside what was: "You said 6 in, stayed down; it went 9 in, lifted." */
export function guessWords(guess: Guess, result: Result, units: Units): string {
  const length = (m: number) => formatLength(m, units);
  switch (guess.kind) {
    case 'travel': {
      const told = (m: number, lifted: boolean) =>
        guess.lifted === undefined
          ? length(m)
          : `${length(m)}, ${lifted ? 'lifted' : 'stayed down'}`;
      const was = told(result.travel_m, result.hops.length > 0);
      return `You said ${told(guess.travel_m, guess.lifted === true)}; it went ${was}.`;
    }
    case 'height':
      return `You said ${length(guess.height_m)} high; it rose ${length(result.peak_height_m)}.`;
    case 'down': {
      const name = (isDown: boolean) => (isDown ? 'on the bottom' : 'still falling');
      return `You said ${name(guess.isDown)}; it was ${name(waitAfterTouch(result) >= 0)}.`;
    }
  }
}
