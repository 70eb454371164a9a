import { formatLength, formatShare, type Units } from '../scoring';
import { aimFor, rulerAt, type Ruler, type Trend } from './ruler';
import type { RobustMean } from './robust-mean';

/** What the ruler says to a learner, in their units. */
export interface RulerWords {
  /** "When you mean 2 ft, the jig now goes 3 ft 7 in.", or from where to where, while that is all there is. */
  goes: string;
  /** "Aim for 1 ft 1 in.", or why it's too soon to: never both. */
  aim: string;
  /** "On average, give or take 1 in, over your last 15 tries. One try strays about 6 in." */
  sure: string;
  /** For who wants them: bias, spread and what is still open. */
  figures: readonly string[];
}

/** Bias and spread smaller than these parts are no fault to speak of. */
const NO_BIAS = 0.05;
const WIDE_SPREAD = 0.15;

/** The sentences for a hand that means `meant_m`. */
export function rulerWords(ruler: Ruler, meant_m: number, units: Units): RulerWords {
  const length = (m: number) => formatLength(m, units);
  const here = rulerAt(ruler, meant_m);
  if (here === null) {
    return {
      goes: `Too few tries at ${length(meant_m)}.`,
      aim: 'Your hand misses differently at each distance.',
      sure: 'Four tries at this one make a ruler for it.',
      figures: figuresOf(ruler)
    };
  }
  const { value, band } = here.bait;
  const isKnown = isAimKnown(here);
  const [least, most] = [Math.max(0, value - band), value + band].map((part) =>
    length(part * meant_m)
  );
  const goes = isKnown
    ? `now goes ${length(value * meant_m)}`
    : `goes ${least} to ${most} on average`;
  const average = isKnown ? `On average, give or take ${length(band * meant_m)}, over` : 'From';
  return {
    goes: `When you mean ${length(meant_m)}, the jig ${goes}.`,
    aim: aimSentence(here, meant_m, units),
    sure: `${average} your last ${here.marks.length} tries. One try strays about ${length(here.scores.variable * meant_m)}.`,
    figures: figuresOf(here)
  };
}

/** Whether the tries leave no doubt that another aim is needed, or that none is. */
function isAimKnown(here: Ruler): boolean {
  const { value, band } = here.bait;
  return aimFor(here, 1) !== null && (here.isSettled || Math.abs(value - 1) > band);
}

/** How far off the bait goes: "79 % too far, give or take 12%". */
export function biasText({ value, band }: RobustMean): string {
  const percent = Math.round((value - 1) * 100);
  const size =
    percent === 0
      ? 'Right on the mark'
      : `${formatShare(Math.abs(value - 1))} too ${percent > 0 ? 'far' : 'short'}`;
  return `${size}, give or take ${formatShare(band)}`;
}

/**
 * The halves beside each other where they differ for sure; else their figures would only seem to contradict
 * what the whole comes to. Of a hand said to change from try to try that is no second verdict.
 */
export function trendText({ before, now, direction }: Trend, isMoving: boolean): string {
  if (direction === 'unclear')
    return isMoving ? '' : 'No clear change between the first half of your tries and the second.';
  const said = direction === 'shrinking' ? 'Your bias is shrinking.' : 'Your bias is growing.';
  return `First half of your tries: ${lower(biasText(before))}. Second half: ${lower(biasText(now))}. ${said}`;
}

function lower(text: string): string {
  return text[0].toLowerCase() + text.slice(1);
}

function aimSentence(here: Ruler, meant_m: number, units: Units): string {
  const { bait, moreTries, scores } = here;
  const aim_m = aimFor(here, meant_m);
  if (aim_m !== null && isAimKnown(here)) {
    if (Math.abs(bait.value - 1) < NO_BIAS)
      return scores.variable > WIDE_SPREAD
        ? 'Right on average. Aim for what you want, but slower, at one speed.'
        : 'Right on the mark. Aim for what you want.';
    return [`Aim for ${formatLength(aim_m, units)}.`, flightSentence(here)].join(' ').trim();
  }
  if (aim_m !== null && moreTries) return `Too soon to say. About ${moreTries} more will tell.`;
  const fix = scores.variable > WIDE_SPREAD ? ' Slow down, and keep one speed.' : '';
  return `Too scattered to aim by: one try isn’t like the next.${fix}`;
}

function flightSentence({ bait, tip, leftBottom }: Ruler): string {
  const isFlying = leftBottom > 0.5 && bait.value > tip.value + bait.band;
  return isFlying ? 'And move slower: the jig’s leaving the bottom.' : '';
}

function figuresOf(here: Ruler): readonly string[] {
  const { bait, isSettled, moreTries, differsByDistance } = here;
  const more = moreTries ? `About ${moreTries} more would settle it.` : '';
  return [
    differsByDistance ? '' : `By now ${lower(biasText(bait))}, nine times in ten.`,
    bait.isMoving ? 'It’s still changing from try to try.' : isSettled ? 'That’s settled.' : more
  ].filter((one) => one !== '');
}
