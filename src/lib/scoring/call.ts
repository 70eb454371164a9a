import { OFF_BOTTOM_M, type Result } from '../model';
import type { Challenge } from './challenge';
import { formatLength, type Units } from './display';
import { fading } from './fading';
import { travelGoalOf } from './goals';
import { PASS_MARK, TOTAL_MARKS } from './pass-mark';
import { waitAfterTouch } from './goals/tip-measures';
import { askedOf, asksCall, guessWords, isLiftRight, type Guess } from './guess';
import { travelBeforeBite } from './run-measures';

/**
 * What a wrong call costs. More than passing leaves, so that nobody passes who does not know what the jig
 * did, and five marks below it, as far as a lazy run has to stay.
 */
export const CALL_MARKS = 30;

/** What passing leaves: a call that costs more fails the best of moves. */
const MOST_LOST = TOTAL_MARKS - PASS_MARK;
/** What a wrong call's nearness saves, as a share: no more than keeps it from passing. */
const BY_NEARNESS = 1 - MOST_LOST / CALL_MARKS;

/** A call that was asked for, beside what the bait did. */
export interface CallGrade {
  /** Null where none was made. */
  guess: Guess | null;
  /** 0–1: how right it was. */
  share: number;
  /** Whole marks that it costs. */
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
  return {
    guess,
    share,
    lost: share === 1 ? 0 : Math.max(1, Math.round((1 - share) * CALL_MARKS))
  };
}

/** A distance may be off by as much as the rod may; a tenth of that further off it fails the try, as the rod does. */
function shareOfCall(challenge: Pick<Challenge, 'goals'>, guess: Guess, result: Result): number {
  if (guess.kind === 'down') return isDown(result) === guess.isDown ? 1 : 0;
  if (guess.kind === 'travel' && !isLiftRight(guess, result)) return 0;
  const band_m = bandOf(challenge, guess, result);
  return fading(Math.abs(offBy(guess, result)) - band_m, band_m, BY_NEARNESS);
}

type Length = Exclude<Guess, { kind: 'down' }>;

/**
 * A height may be off by this part of what the bait rose. Above a half, one who always says "not at all"
 * would earn by it. A design value.
 */
const HEIGHT_PART = 1 / 3;

function bandOf(
  challenge: Pick<Challenge, 'goals'>,
  { kind }: Length,
  { peak_height_m }: Result
): number {
  const travel_m = kind === 'travel' && travelGoalOf(challenge)?.band_m;
  return travel_m || HEIGHT_PART * Math.max(OFF_BOTTOM_M, peak_height_m);
}

function offBy(guess: Length, result: Result): number {
  return guess.kind === 'travel'
    ? guess.travel_m - travelBeforeBite(result)
    : guess.height_m - result.peak_height_m;
}

function isDown(result: Result): boolean {
  return waitAfterTouch(result) >= 0;
}

/** What the table says of it. */
export function callReached({ lost }: Pick<CallGrade, 'lost'>): string {
  if (lost === 0) return 'right';
  return lost <= MOST_LOST ? 'a bit off' : 'wrong';
}

/** How one tells in any water that a jig is down. */
export const WATCH_THE_LINE = 'Watch the line: it stops running out when the jig is down.';

/** What to change of a call that was not right. */
export function callAdvice({ guess }: CallGrade, result: Result, units: Units): string {
  if (!guess) return 'Call it before you look.';
  if (guess.kind === 'down') return `${guessWords(guess, result, units)} ${WATCH_THE_LINE}`;
  if (guess.kind === 'travel' && !isLiftRight(guess, result))
    return `${liftMiss(guess)} A pull like that ${guess.lifted ? 'stays down' : 'lifts it'}.`;
  const miss = callMiss({ guess }, result, units);
  return guess.kind === 'travel'
    ? `${miss} Go by how far the tip moved.`
    : `${miss} Count its fall: a higher hop falls longer.`;
}

/** How far it went is told beside it, of what the hand did. */
function liftMiss({ lifted }: { lifted?: boolean }): string {
  return `You said it ${lifted ? 'lifted; it stayed down' : 'stayed down; it lifted'}.`;
}

/** What was wrong with a call, and no more. */
function callMiss({ guess }: Pick<CallGrade, 'guess'>, result: Result, units: Units): string {
  if (!guess) return 'You made no call.';
  if (guess.kind === 'down') return guessWords(guess, result, units);
  if (guess.kind === 'travel' && !isLiftRight(guess, result)) return liftMiss(guess);
  const off_m = offBy(guess, result);
  const off = formatLength(Math.abs(off_m), units);
  if (guess.kind === 'travel') return `Your call was ${off} too ${off_m > 0 ? 'long' : 'short'}.`;
  const rose = formatLength(result.peak_height_m, units);
  return `Your call was ${off} too ${off_m > 0 ? 'high' : 'low'}: it rose ${rose}.`;
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
