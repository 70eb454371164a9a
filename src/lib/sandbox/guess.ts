import { FOOT_M } from '$lib/model';
import { withUnit, type GuessQuantity, type Guess, type Units } from '$lib/scoring';

/** What is asked in words, and what the mark beside each answer is: solid down, open off the bottom. */
export const GUESS_QUESTIONS: Record<GuessQuantity, Question> = {
  travel: {
    ask: 'What did the jig do?',
    typed: 'It moved',
    choice: 'Did it stay on the bottom?',
    down: 'stayed down',
    up: 'lifted'
  },
  height: { ask: 'How high did the jig go?', typed: 'It rose' },
  down: {
    ask: 'Where was the jig when you moved the rod?',
    choice: 'Was it on the bottom?',
    down: 'on the bottom',
    up: 'still falling'
  }
};

interface Question {
  ask: string;
  /** Leads the length to be typed, if one is. */
  typed?: string;
  choice?: string;
  down?: string;
  up?: string;
}

/** The guess that was made in the form, or what is missing in words. */
export function readGuess(
  asks: GuessQuantity,
  typed: string,
  isDown: boolean | null,
  units: Units
): Guess | string {
  if (asks === 'down') return isDown === null ? 'Say where it was.' : { kind: 'down', isDown };
  const length_m = readTravel(typed, units);
  if (typeof length_m === 'string') return length_m;
  if (asks === 'height') return { kind: 'height', height_m: length_m };
  if (isDown === null) return 'Say whether it stayed down.';
  return { kind: 'travel', travel_m: length_m, lifted: !isDown };
}

/** A number that is typed: inches or centimetres, as a hand would say it. */
export const GUESS_UNIT: Record<Units, { readonly name: string; readonly m: number }> = {
  imperial: { name: 'in', m: FOOT_M / 12 },
  metric: { name: 'cm', m: 0.01 }
};

/** Nobody means more than this, m. */
const MOST_M = 15;

/** A typed travel in m, or what is wrong with it in words. */
export function readTravel(text: string, units: Units): number | string {
  const { name, m } = GUESS_UNIT[units];
  const typed = text.trim().replace('−', '-').replace(',', '.');
  const value = Number(typed);
  if (typed === '' || Number.isNaN(value)) return `Give a number of ${longName(units)}.`;
  const most = Math.round(MOST_M / m);
  if (Math.abs(value) > most) return `At most ${withUnit(most, name)}.`;
  return value * m;
}

export function longName(units: Units): string {
  return units === 'imperial' ? 'inches' : 'centimetres';
}
