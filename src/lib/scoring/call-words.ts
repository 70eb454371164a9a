import type { Result } from '../model';
import { MOST_LOST, offBy, type CallGrade } from './call';
import type { Challenge } from './challenge';
import { formatFine, formatLength, LEAST_M, toldLength, type Units } from './display';
import { travelGoalOf } from './goals';
import { askedOf, isLiftRight, type LengthGuess } from './guess';
import { guessWords, toldLengths } from './guess-words';

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

/** What the table says of it. */
export function callReached({ lost }: Pick<CallGrade, 'lost'>): string {
  if (lost === 0) return 'right';
  return lost <= MOST_LOST ? 'a bit off' : 'wrong';
}

/** How one tells in any water that a jig is down. */
export const WATCH_THE_LINE = 'Watch the line: it stops running out when the jig is down.';

/** What to change of a call that was not right. */
export function callAdvice(
  challenge: Called,
  { guess, lost }: CallGrade,
  result: Result,
  units: Units
): string {
  if (!guess) return 'Call it before you look.';
  if (guess.kind === 'down')
    return `${guessWords(guess, result, units, challenge.goals)} ${WATCH_THE_LINE}`;
  if (guess.kind === 'travel' && !isLiftRight(guess, result))
    return `${liftMiss(guess)} A pull like that ${guess.lifted ? 'stays down' : 'lifts it'}.`;
  const miss = lengthMiss(challenge, { guess, lost }, result, units);
  return guess.kind === 'travel'
    ? `${miss} Go by how far the tip moved.`
    : `${miss} Count its fall: a higher hop falls longer.`;
}

/** How far it went is told beside it, of what the hand did. */
function liftMiss({ lifted }: { lifted?: boolean }): string {
  return `You said it ${lifted ? 'lifted; it stayed down' : 'stayed down; it lifted'}.`;
}

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
    return `Your call was ${off_m === 0 ? 'a hair' : off} too ${isMore ? 'high' : 'low'}: it rose ${was.text}.`;
  const band_m = bandOfTravel(challenge);
  // Told as no farther off than it may be, it is told as over that.
  const isBand = Math.abs(off_m) <= toldLength(band_m, units) + LEAST_M;
  const over = lost <= MOST_LOST ? 'a hair over' : 'just over';
  const told = isBand ? `${over} ${formatLength(band_m, units)}` : off;
  return `Your call was ${told} too ${isMore ? 'long' : 'short'}.`;
}
