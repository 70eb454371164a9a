import type { ObjectiveStanding } from '$lib/practice';
import { formatShare } from '$lib/scoring';

/** Known for sure from here on, and shaky below: the scheduler asks again at nine tenths. */
const SURE = 0.9;
const SHAKY = 0.6;

export interface StandingWords {
  known: string;
  sure: string;
  fades: string;
}

/** What is known, how surely, and what fades when, in words. */
export function standingWords({
  known,
  between,
  fades_in_days,
  answers,
  right,
  asked,
  of
}: ObjectiveStanding): StandingWords {
  if (between === null || fades_in_days === null) {
    return { known: 'Not asked yet', sure: '', fades: '' };
  }
  const [least, most] = between;
  return {
    known: knownWord(known),
    sure:
      `${right} of ${answers} right; over many questions, expect ${Math.round(100 * least)} to ${formatShare(most)}. ` +
      `${asked} of ${of} questions asked.`,
    fades:
      fades_in_days === 0 ? 'today' : fades_in_days === 1 ? 'tomorrow' : `in ${fades_in_days} days`
  };
}

/** The forecast; none of forgetting where nothing was known. */
function knownWord(known: number | null): string {
  if (known === null) return 'Not known yet';
  return known >= SURE ? 'There' : known >= SHAKY ? 'Fading' : 'Mostly gone';
}

/** Soonest to be asked again first; those not asked yet last. */
export function bySoonest(a: ObjectiveStanding, b: ObjectiveStanding): number {
  return (a.fades_in_days ?? Infinity) - (b.fades_in_days ?? Infinity) || 0;
}
