import { formatLength, formatShare, type Units } from '../scoring';
import { aimFor, rulerAt, type Ruler, type Trend } from './ruler';
import type { RobustMean } from './robust-mean';

/** What the ruler says to a learner, in their units. */
export interface RulerWords {
  /** "When you mean 2 ft, the bait goes 3 ft 7 in on average." */
  goes: string;
  /** "Aim for 1 ft 1 in." */
  aim: string;
  /** How sure that is, and what would make it surer. */
  sure: string;
  /** Bias and a single try's spread apart, and what each asks for. */
  why: string;
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
      why: whySentence(ruler, meant_m, units)
    };
  }
  const { bait } = here;
  const aim_m = aimFor(here, meant_m);
  const isTrue = Math.abs(bait.value - 1) < NO_BIAS;
  return {
    goes: `When you mean ${length(meant_m)}, the jig goes ${length(bait.value * meant_m)} on average.`,
    aim:
      aim_m === null
        ? 'Too uneven yet to say what to aim for.'
        : isTrue
          ? 'Right on average. Aim for what you want.'
          : `Aim for ${length(aim_m)}.`,
    sure: sureSentence(here, meant_m, units),
    why: whySentence(here, meant_m, units)
  };
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

/** Of a hand said to change from try to try, that its halves don't tell is no second verdict. */
export function trendText({ before, now, direction }: Trend, isMoving: boolean): string {
  const was = `First half of your tries: ${lower(biasText(before))}. Second half: ${lower(biasText(now))}.`;
  const said = {
    shrinking: 'Your bias is shrinking.',
    growing: 'Your bias is growing.',
    unclear: isMoving ? '' : 'No clear change yet.'
  };
  return `${was} ${said[direction]}`.trim();
}

function lower(text: string): string {
  return text[0].toLowerCase() + text.slice(1);
}

function sureSentence({ bait, marks, isSettled, moreTries }: Ruler, meant_m: number, units: Units) {
  const give = formatLength(bait.band * meant_m, units);
  const known = `From your last ${marks.length} tries: that average holds to ${give}, nine times in ten.`;
  if (bait.isMoving) return `${known} It’s still changing from try to try.`;
  if (isSettled) return `${known} That’s settled.`;
  if (moreTries === null) return `${known} Your tries differ too much to settle it.`;
  return `${known} About ${moreTries} more would settle it.`;
}

function whySentence(ruler: Ruler, meant_m: number, units: Units): string {
  const { scores, bait, tip, leftBottom, differsByDistance } = ruler;
  const all = differsByDistance ? '' : `On average ${lower(biasText(bait))}. `;
  const stray = formatLength(scores.variable * meant_m, units);
  const single = `A single try strays about ${stray} from your average.`;
  const slower = scores.variable > WIDE_SPREAD ? ' Slow down, and keep one speed.' : '';
  const flight =
    leftBottom > 0.5 && bait.value > tip.value + bait.band
      ? ' The jig goes farther than your tip: it’s leaving the bottom. Move slower.'
      : '';
  return all + single + slower + flight;
}
