import type { Result } from '../model';
import { MOST_LOST, offBy, shareOfLength, wholeLost, type CallGrade } from './call';
import type { Challenge } from './challenge';
import { formatFine, formatLength, LEAST_M, toldLength, type Units } from './display';
import { travelGoalOf } from './goals';
import { askedOf, isLiftRight, type Guess, type LengthGuess } from './guess';
import { guessWords, toldLengths } from './guess-words';
import { byTheTip } from './lost-way';

type Called = Pick<Challenge, 'goals'>;

/** How near it must be, as the table says of each goal what is asked. */
export function callAsked(challenge: Called, units: Units): string {
  switch (askedOf(challenge)) {
    case 'travel':
      return `within ${formatLength(bandOfTravel(challenge), units)}, and whether it lifted`;
    case 'height':
      return 'within a third of how high it rose';
    case 'down':
      return 'whether it was on the bottom';
  }
}

const bandOfTravel = (challenge: Called): number => travelGoalOf(challenge)?.band_m ?? 0;

/** What the table says of it, whatever the move left for it to take. */
export function callReached(call: Pick<CallGrade, 'share'>): string {
  if (call.share === 1) return 'right';
  return wholeLost(call) <= MOST_LOST ? 'a bit off' : 'wrong';
}

/**
 * What was said beside what was; where a sentence follows that tells the length, a number is told once, and
 * whether the call was right stands in its place.
 */
export function calledWords(
  { guess, share }: Pick<CallGrade, 'share'> & { guess: Guess },
  result: Result,
  units: Units,
  did: string,
  goals: Challenge['goals'] = []
): string {
  const words = guessWords(guess, result, units, goals);
  if (guess.kind === 'down') return words;
  const isTold = tellsLength(did, toldLengths(guess, result, units, goals).was.text);
  return isTold ? words.replace(/; it .*$/, `: ${callReached({ share })}.`) : words;
}

/** Whether a sentence has this very length: not 1 ft in "1 ft 3 in", nor 3 in at its end or 0 in at that of "10 in". */
function tellsLength(sentence: string, length: string): boolean {
  return new RegExp(`(?<!\\S|ft\\s)${length.replaceAll('.', '\\.')}(?!\\s\\d)`).test(sentence);
}

/** How one tells in any water that a jig is down. */
export const WATCH_THE_LINE = 'Watch the line: it stops running out when the jig is down.';

/** What to change of a call that was not right, and how to call the next, short. */
export interface CallAdvice {
  words: string;
  /** As it stands after what the rod is to do. */
  next: string;
}

export function callAdvice(
  challenge: Called & Pick<Challenge, 'setup'>,
  { guess, lost }: CallGrade,
  result: Result,
  units: Units
): CallAdvice {
  if (!guess) return { words: CALL_FIRST, next: CALL_FIRST };
  if (guess.kind === 'down') {
    const was = guessWords(guess, result, units, challenge.goals);
    return { words: `${was} ${WATCH_THE_LINE}`, next: WATCH_THE_LINE };
  }
  const length = lengthMiss(challenge, { guess, lost }, result, units);
  if (guess.kind === 'height')
    return { words: `Your call was ${length} ${COUNT_ITS_FALL}`, next: COUNT_ITS_FALL };
  const isLift = !isLiftRight(guess, result);
  const isLengthRight = shareOfLength(challenge, guess, result) === 1;
  const { was } = toldLengths(guess, result, units, challenge.goals);
  const fix = isLift && isLengthRight ? liftFix(guess) : byTheTip(challenge, result, was, units);
  const miss = isLift ? liftMiss(guess) : `Your call was ${length}`;
  const both = isLift && !isLengthRight ? `${miss} Your call was also ${length}` : miss;
  return { words: `${both} ${fix}`, next: `Call: ${fix[0].toLowerCase()}${fix.slice(1)}` };
}

const CALL_FIRST = 'Call it before you look.';
const COUNT_ITS_FALL = 'Count its fall: a higher hop falls longer.';

type LiftGuess = Pick<Guess & { kind: 'travel' }, 'lifted'>;

const liftMiss = ({ lifted }: LiftGuess): string =>
  `You said it ${lifted ? 'lifted; it stayed down' : 'stayed down; it lifted'}.`;
const liftFix = ({ lifted }: LiftGuess): string =>
  `A pull like that ${lifted ? 'stays down' : 'lifts it'}.`;

/** By how much a length was called wrong, of the lengths that are told, so that the reader's sum comes out. */
function lengthMiss(
  challenge: Called,
  { guess, lost }: Pick<CallGrade, 'lost'> & { guess: LengthGuess },
  result: Result,
  units: Units
): string {
  const { said, was } = toldLengths(guess, result, units, challenge.goals);
  const off_m = said.m - was.m;
  const isMore = offBy(guess, result) > 0;
  const off = formatFine(Math.abs(off_m), units);
  if (guess.kind === 'height')
    return `${off_m === 0 ? 'a hair' : off} too ${isMore ? 'high' : 'low'}: it rose ${was.text}.`;
  const band_m = bandOfTravel(challenge);
  // Told as no farther off than it may be, it is told as over that.
  const isBand = Math.abs(off_m) <= toldLength(band_m, units) + LEAST_M;
  const over = lost <= MOST_LOST ? 'a hair over' : 'just over';
  const told = isBand ? `${over} ${formatLength(band_m, units)}` : off;
  return `${told} too ${isMore ? 'long' : 'short'}.`;
}
