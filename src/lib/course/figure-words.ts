import { formatLength, formatPull, formatShare, formatTime, inUnits, type Units } from '../scoring';
import type { MeasureName } from './items/measures';
import { saidAbout } from './items/said';
import type { PredictQuestion } from './lesson';
import type { AskedFigure } from './prediction';

type Words = readonly [figure: string, of: string];

/** A jig that moved less than this away stayed put, m: half an inch. */
const PUT_M = 0.0127;

/** From here on nobody on the water knows it to the inch, m: a foot. */
const LONG_M = 0.3;

const roughLength = (m: number, units: Units) =>
  m < LONG_M ? formatLength(m, units) : `about ${inUnits(saidAbout(m), units)}`;

type Length = (m: number, units: Units) => string;

const WORDS: Record<MeasureName, (value: number, units: Units, length: Length) => Words> = {
  travel_m: (m, units, length) => [
    length(Math.abs(m), units),
    m < -PUT_M ? 'away from you' : 'toward you'
  ],
  peak_height_m: (m, units, length) => [length(m, units), 'off bottom, at its highest'],
  contact: (share) => [formatShare(share), 'of the time on bottom'],
  fall_s: (s) => [formatTime(s), 'from splash to bottom'],
  airborne_s: (s) => [formatTime(s), 'off bottom'],
  pull_N: (newton, units) => [formatPull(newton, units), 'the hardest pull at the tip']
};

/** What a run came to, as a figure and what it is of. */
export function figureWords(asked: AskedFigure, units: Units): Words {
  return wordsOf(asked, units, roughLength);
}

/** The same to the inch, as it stands beside the picture of the run that is shown next. */
export function seenFigureWords(asked: AskedFigure, units: Units): Words {
  return wordsOf(asked, units, formatLength);
}

function wordsOf({ of, value, hung }: AskedFigure, units: Units, length: Length): Words {
  const [figure, says] = WORDS[of](value, units, length);
  return [figure, of === 'travel_m' && hung ? `${says} before it hung, then nothing` : says];
}

/**
 * What a question's answer tells in figures: none where its options are figures, and of a lift neither how far
 * nor how high it came, of which guides see half (docs/decisions).
 */
export function toldFigures<T extends { of: MeasureName }>(
  { options, run }: Pick<PredictQuestion, 'options' | 'run'>,
  figures: readonly T[]
): readonly T[] {
  if (isOfFigures({ options })) return [];
  const isLift = run.plane === 'lift' && run.setup.start.line !== 'splash';
  return figures.filter(({ of }) => !isLift || (of !== 'travel_m' && of !== 'peak_height_m'));
}

/** Whether its options are figures themselves: the model's own beside the right one would be a second answer. */
function isOfFigures({ options }: { options: readonly { says: string }[] }): boolean {
  return options.every(({ says }) => /\d/.test(says));
}
