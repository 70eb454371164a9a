import type { Answer, Given } from '$lib/course/items';
import { guessOf, type AnswerTally } from '$lib/practice';
import type { KeptGuess } from '$lib/wire';
import { formatLength, formatShare, inUnits, type Challenge, type Units } from '$lib/scoring';
import { said } from '$lib/app/quiz';

type Counted = Pick<AnswerTally, 'right' | 'guessed' | 'answered'>;

/** What the client said before being told, in few words; nothing where nothing was said. */
export function guessText(kept: KeptGuess, challenge: Challenge, units: Units): string {
  const guess = guessOf(kept, challenge);
  switch (guess?.kind) {
    case 'travel':
      return formatLength(guess.travel_m, units) + liftedText(guess.lifted);
    case 'height':
      return `${formatLength(guess.height_m, units)} high`;
    case 'down':
      return guess.isDown ? 'on the bottom' : 'still falling';
    default:
      return '';
  }
}

function liftedText(lifted: boolean | undefined): string {
  if (lifted === undefined) return '';
  return lifted ? ', lifted' : ', stayed down';
}

/** "2 of 8 tries", or "9 tries, 8 were asked" */
export function triesText(made: number, asked: number): string {
  const tries = `${asked} ${asked === 1 ? 'try' : 'tries'}`;
  return made > asked ? `${made} tries, ${asked} asked for` : `${made} of ${tries}`;
}

/** An answer, given or right, in the question's own words. */
export function answerText(answer: Answer, given: Given, units: Units): string {
  if (typeof given === 'number') {
    return answer.form === 'mark' ? said(given, answer.quantity, units) : String(given);
  }
  const things = answer.form === 'choose' ? answer.options : [];
  const all = answer.form === 'order' ? answer.things : things;
  const says = (id: string) => all.find((one) => one.id === id)?.says ?? id;
  return [given]
    .flat()
    .map((id) => inUnits(says(id), units))
    .join(', then ');
}

/** "3 of 4 right, 1 by a guess; 5 were asked." */
export function rightText({ right, guessed, answered }: Counted, asked: number): string {
  if (answered === 0) return `None of ${asked} answered yet.`;
  const guess = guessed > 0 ? `, ${guessed} by a guess` : '';
  return `${right} of ${answered} right${guess}${answered < asked ? `; ${asked} were asked` : ''}.`;
}

/** So much of the way on the bottom is nothing to talk about. */
const ALL_BUT_ON_IT = 0.95;

/** "60 % of the way on the bottom", where a task asks for it and it was lost. */
export function contactText({ goals }: Pick<Challenge, 'goals'>, contact: number): string {
  const isAsked = goals.some(({ kind }) => kind === 'contact');
  return isAsked && contact < ALL_BUT_ON_IT
    ? `${formatShare(contact)} of the way on the bottom`
    : '';
}
