import type { Result } from '../model';
import type { Challenge } from './challenge';
import { fineLength, formatFine, formatLength, toldLength, type Units } from './display';
import { waitAfterTouch } from './goals/tip-measures';
import { isLiftRight, saidLength, wasLength, type Guess, type LengthGuess } from './guess';
import { toldWay, type ToldLength } from './way-words';

type Goals = Challenge['goals'];
/** A guess and what was, as they are told: both finer where so much was said as no whole number tells. */
export function toldLengths(
  guess: LengthGuess,
  result: Result,
  units: Units,
  goals: Goals
): { said: ToldLength; was: ToldLength } {
  const said_m = saidLength(guess);
  const was_m = wasLength(guess, result);
  if (formatFine(said_m, units) !== formatLength(said_m, units))
    return { said: finely(said_m, units), was: finely(was_m, units) };
  return {
    said: plainly(said_m, units),
    was: guess.kind === 'travel' ? toldWay(goals, was_m, units) : plainly(was_m, units)
  };
}

const plainly = (m: number, units: Units): ToldLength => ({
  text: formatLength(m, units),
  m: toldLength(m, units)
});
const finely = (m: number, units: Units): ToldLength => ({
  text: formatFine(m, units),
  m: fineLength(m, units)
});

/**
 * What was said beside what was: "You said 6 in, stayed down; it went 9 in, lifted."
 * @param goals of the try, whose limits tell how fine a way is told; none in water without a task
 */
export function guessWords(guess: Guess, result: Result, units: Units, goals: Goals = []): string {
  if (guess.kind === 'down') return downWords(guess, result);
  const { said, was } = toldLengths(guess, result, units, goals);
  if (guess.kind === 'height') return `You said ${said.text} high; it rose ${was.text}.`;
  // What was called right needs no words.
  const isRight = isLiftRight(guess, result);
  const told = ({ text }: ToldLength, lifted: boolean) =>
    isRight ? text : `${text}, ${lifted ? 'lifted' : 'stayed down'}`;
  const when = result.events.some(({ kind }) => kind === 'bite') ? ' before the bite' : '';
  return `You said ${told(said, guess.lifted === true)}; it went ${told(was, result.hops.length > 0)}${when}.`;
}

function downWords(guess: { isDown: boolean }, result: Result): string {
  const name = (isDown: boolean) => (isDown ? 'on the bottom' : 'still falling');
  const isDown = waitAfterTouch(result) >= 0;
  if (guess.isDown !== isDown) return `You said ${name(guess.isDown)}; it was ${name(isDown)}.`;
  return `Right, it was ${name(isDown)}${isDown ? '' : ': you moved too early'}.`;
}
