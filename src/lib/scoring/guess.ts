import { SKIP_M, type Result } from '../model';
import type { Challenge } from './challenge';
import { COUNTED_TO_S, waitAfterTouch } from './goals/tip-measures';
import { travelBeforeBite } from './run-measures';

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

/** A guess that is a length. */
export type LengthGuess = Exclude<Guess, { kind: 'down' }>;

export const saidLength = (guess: LengthGuess): number =>
  guess.kind === 'travel' ? guess.travel_m : guess.height_m;

/** What the bait did of what was guessed, m. */
export const wasLength = ({ kind }: LengthGuess, result: Result): number =>
  kind === 'travel' ? travelBeforeBite(result) : result.peak_height_m;

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

/**
 * Whether there is something to call: not when the rod moved, of a rod that never was; nor where it moved so
 * little before the touch that no count tells the one from the other.
 */
export function canBeCalled(asked: GuessQuantity, result: Result): boolean {
  if (asked !== 'down') return true;
  const wait_s = waitAfterTouch(result);
  return wait_s !== Infinity && !(wait_s < 0 && wait_s >= -COUNTED_TO_S);
}

const ASK_CALLS = ['travel', 'hops', 'bottom_first'];

/** A skip is so little of a lift that either may be said of it. */
export function isLiftRight(
  { lifted }: { lifted?: boolean },
  { hops, peak_height_m }: Pick<Result, 'hops' | 'peak_height_m'>
): boolean {
  return lifted === undefined || (lifted ? peak_height_m >= SKIP_M : hops.length === 0);
}
