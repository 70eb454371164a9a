import type { Result } from '../model';
import type { Challenge } from './challenge';
import { formatLength, type Units } from './display';
import { travelGoalOf } from './goals';
import { travelBeforeBite } from './run-measures';
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
      const hasLifted = result.hops.length > 0;
      // What was called right needs no words.
      const isRight = guess.lifted === undefined || guess.lifted === hasLifted;
      const told = (m: number, lifted: boolean) =>
        isRight ? length(m) : `${length(m)}, ${lifted ? 'lifted' : 'stayed down'}`;
      const was = told(travelBeforeBite(result), hasLifted);
      const when = result.events.some(({ kind }) => kind === 'bite') ? ' before the bite' : '';
      return `You said ${told(guess.travel_m, guess.lifted === true)}; it went ${was}${when}.`;
    }
    case 'height':
      return `You said ${length(guess.height_m)} high; it rose ${length(result.peak_height_m)}.`;
    case 'down': {
      const name = (isDown: boolean) => (isDown ? 'on the bottom' : 'still falling');
      return `You said ${name(guess.isDown)}; it was ${name(waitAfterTouch(result) >= 0)}.`;
    }
  }
}

const NO_MARKS = 'It costs no marks.';

/**
 * What to change of a call that was wrong: whether it lifted, whether it was down, or a length further off
 * than the challenge allows the rod. Null where it was right, or close.
 */
export function callAdvice(
  guess: Guess,
  challenge: Pick<Challenge, 'goals'>,
  result: Result,
  units: Units
): string | null {
  const said = guessWords(guess, result, units);
  if (guess.kind === 'down') {
    const isRight = guess.isDown === waitAfterTouch(result) >= 0;
    return isRight
      ? null
      : `${said} ${NO_MARKS} Watch the line: it goes slack when the jig is down.`;
  }
  if (guess.kind === 'height') return null;
  if (guess.lifted !== undefined && guess.lifted !== result.hops.length > 0)
    return `${said} ${NO_MARKS} Feel whether it is still on the bottom.`;
  const goal = travelGoalOf(challenge);
  if (!goal) return null;
  const off_m = guess.travel_m - travelBeforeBite(result);
  if (Math.abs(off_m) <= goal.band_m) return null;
  const off = formatLength(Math.abs(off_m), units);
  return `Your call was ${off} too ${off_m > 0 ? 'long' : 'short'}. ${NO_MARKS} Feel where it starts and stops.`;
}
