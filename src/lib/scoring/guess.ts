import { SKIP_M, type Result } from '../model';
import type { Challenge } from './challenge';
import { formatLength, type Units } from './display';
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

/** Whether a try that was out of sight is called before it is seen: where a goal says how near is right. */
export function asksCall({
  goals,
  look_alikes
}: Pick<Challenge, 'goals' | 'look_alikes'>): boolean {
  return !look_alikes && goals.some(({ kind }) => ASK_CALLS.includes(kind));
}

/** Whether there is something to call: not when the rod moved, of a rod that never was. */
export function canBeCalled(asked: GuessQuantity, result: Result): boolean {
  return asked !== 'down' || waitAfterTouch(result) !== Infinity;
}

const ASK_CALLS = ['travel', 'hops', 'bottom_first'];

/** A skip is so little of a lift that either may be said of it. */
export function isLiftRight(
  { lifted }: { lifted?: boolean },
  { hops, peak_height_m }: Pick<Result, 'hops' | 'peak_height_m'>
): boolean {
  return lifted === undefined || (lifted ? peak_height_m >= SKIP_M : hops.length === 0);
}

/** What was said beside what was: "You said 6 in, stayed down; it went 9 in, lifted." */
export function guessWords(guess: Guess, result: Result, units: Units): string {
  const length = (m: number) => formatLength(m, units);
  switch (guess.kind) {
    case 'travel': {
      const hasLifted = result.hops.length > 0;
      // What was called right needs no words.
      const isRight = isLiftRight(guess, result);
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
      const isDown = waitAfterTouch(result) >= 0;
      if (guess.isDown !== isDown) return `You said ${name(guess.isDown)}; it was ${name(isDown)}.`;
      return `Right, it was ${name(isDown)}${isDown ? '' : ': you moved too early'}.`;
    }
  }
}

/** The same, where a sentence follows that tells the length: a number is told once. */
export function calledWords(guess: Guess, result: Result, units: Units, did: string): string {
  const said = guessWords(guess, result, units);
  if (guess.kind === 'down') return said;
  const was_m = guess.kind === 'travel' ? travelBeforeBite(result) : result.peak_height_m;
  const isTold = did.includes(formatLength(was_m, units));
  return isTold ? said.replace(/; it .*$/, '.') : said;
}
