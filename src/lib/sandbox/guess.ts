import { FOOT_M } from '$lib/model';
import {
  formatDepth,
  typedLength_m,
  type GuessQuantity,
  type Guess,
  type Units
} from '$lib/scoring';

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
  { length, feet }: { length: string; feet: string },
  isDown: boolean | null,
  units: Units
): Guess | string {
  if (asks === 'down') return isDown === null ? 'Say where it was.' : { kind: 'down', isDown };
  const length_m = readTravel(length, units, feet);
  if (typeof length_m === 'string')
    return `${GUESS_QUESTIONS[asks].typed}: ${length_m.replace(/^Give/, 'give')}`;
  if (asks === 'height') return { kind: 'height', height_m: length_m };
  if (isDown === null) return 'Say whether it stayed down.';
  return { kind: 'travel', travel_m: length_m, lifted: !isDown };
}

/** What a bare number is typed in, as a hand would say it; feet have a field of their own. */
export const GUESS_UNIT = { imperial: 'in', metric: 'cm' } as const satisfies Record<Units, string>;

/** Nobody means more than this, m; as in a lesson's call. */
const MOST_M: Record<Units, number> = { imperial: 50 * FOOT_M, metric: 15 };

/** A typed length in m: "15", "1 ft 3 in" or "1.2 m", and feet before it; or what is wrong with it in words. */
export function readTravel(text: string, units: Units, feet = ''): number | string {
  const typed = `${feet.trim() && `${feet} ft `}${text}`.trim();
  const length_m = typedLength_m(typed, GUESS_UNIT[units]);
  if (length_m === null) {
    const example = units === 'imperial' ? '1 ft 3 in' : '38 cm';
    const wrong = typed && `“${typed}” is no length. `;
    return `${wrong}Give ${longName(units)}, such as ${example}.`;
  }
  if (Math.abs(length_m) > MOST_M[units])
    return `${formatDepth(length_m, units)} is too much. At most ${formatDepth(MOST_M[units], units)}.`;
  return length_m;
}

function longName(units: Units): string {
  return units === 'imperial' ? 'feet, inches or both' : 'centimetres';
}
