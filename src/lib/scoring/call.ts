import { OFF_BOTTOM_M, type Result } from '../model';
import type { Challenge } from './challenge';
import { fading } from './fading';
import { travelGoalOf } from './goals';
import { PASS_MARK, TOTAL_MARKS } from './pass-mark';
import { waitAfterTouch } from './goals/tip-measures';
import {
  askedOf,
  asksCall,
  isLiftRight,
  saidLength,
  wasLength,
  type Guess,
  type LengthGuess
} from './guess';
import { travelBeforeBite } from './run-measures';

/**
 * What a wrong call costs. More than passing leaves, so that nobody passes who does not know what the jig
 * did, and five marks below it, as far as a lazy run has to stay.
 */
export const CALL_MARKS = 30;

/** What passing leaves: a call that costs more fails the best of moves. */
export const MOST_LOST = TOTAL_MARKS - PASS_MARK;
/** What a wrong call's nearness saves, as a share: no more than keeps it from passing. */
const BY_NEARNESS = 1 - MOST_LOST / CALL_MARKS;

/** A call that was asked for, beside what the bait did. */
export interface CallGrade {
  /** Null where none was made. */
  guess: Guess | null;
  /** 0–1: how right it was. */
  share: number;
  /** Whole marks that it costs: no more than the move left. */
  lost: number;
}

/** `guess` is undefined where none was asked for, null where none was given. A call of what was not asked is none. */
export function gradeCall(
  challenge: Pick<Challenge, 'goals' | 'look_alikes'>,
  guess: Guess | null | undefined,
  result: Result
): CallGrade | null {
  if (guess === undefined || !asksCall(challenge)) return null;
  if (guess && guess.kind !== askedOf(challenge)) return null;
  const share = guess ? shareOfCall(challenge, guess, result) : 0;
  return { guess, share, lost: wholeLost({ share }) };
}

/** Whole marks that a call costs where there are so many to take. */
export function wholeLost({ share }: Pick<CallGrade, 'share'>): number {
  return share === 1 ? 0 : Math.max(1, Math.round((1 - share) * CALL_MARKS));
}

/** A distance may be off by as much as the rod may; a tenth of that further off it fails the try, as the rod does. */
function shareOfCall(challenge: Pick<Challenge, 'goals'>, guess: Guess, result: Result): number {
  if (guess.kind === 'down') return isDown(result) === guess.isDown ? 1 : 0;
  if (guess.kind === 'travel' && !isLiftRight(guess, result)) return 0;
  return shareOfLength(challenge, guess, result);
}

/** 0–1: how right its length alone was. */
export function shareOfLength(
  challenge: Pick<Challenge, 'goals'>,
  guess: LengthGuess,
  result: Result
): number {
  const band_m = bandOf(challenge, guess, result);
  return fading(Math.abs(offBy(guess, result)) - band_m, band_m, BY_NEARNESS);
}

/**
 * A height may be off by this part of what the bait rose. Above a half, one who always says "not at all"
 * would earn by it. A design value.
 */
const HEIGHT_PART = 1 / 3;

function bandOf(
  challenge: Pick<Challenge, 'goals'>,
  { kind }: LengthGuess,
  { peak_height_m }: Result
): number {
  const travel_m = kind === 'travel' && travelGoalOf(challenge)?.band_m;
  return travel_m || HEIGHT_PART * Math.max(OFF_BOTTOM_M, peak_height_m);
}

/** By how much more was said than was, m. */
export function offBy(guess: LengthGuess, result: Result): number {
  return saidLength(guess) - wasLength(guess, result);
}

function isDown(result: Result): boolean {
  return waitAfterTouch(result) >= 0;
}

/** What one would call who saw the try. */
export function trueCall(challenge: Pick<Challenge, 'goals'>, result: Result): Guess {
  switch (askedOf(challenge)) {
    case 'travel':
      return {
        kind: 'travel',
        travel_m: travelBeforeBite(result),
        lifted: result.hops.length > 0
      };
    case 'height':
      return { kind: 'height', height_m: result.peak_height_m };
    case 'down':
      return { kind: 'down', isDown: isDown(result) };
  }
}
