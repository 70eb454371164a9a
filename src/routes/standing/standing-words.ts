import type { ObjectiveStanding } from '$lib/practice';
import { withUnit } from '$lib/scoring';

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
  asked,
  of
}: ObjectiveStanding): StandingWords {
  if (known === null || between === null || fades_in_days === null) {
    return { known: 'Not asked yet', sure: '', fades: '' };
  }
  const word = known >= SURE ? 'There' : known >= SHAKY ? 'Fading' : 'Mostly gone';
  const [least, most] = between.map((share) => Math.round(100 * share));
  return {
    known: word,
    sure:
      `${asked} of ${of} questions asked. ` +
      `${answers === 1 ? '1 answer' : `${answers} answers`}: ${least} to ${withUnit(most, '%')} right.`,
    fades:
      fades_in_days === 0 ? 'today' : fades_in_days === 1 ? 'tomorrow' : `in ${fades_in_days} days`
  };
}

/** Soonest to fade first; those not asked yet last. */
export function bySoonest(a: ObjectiveStanding, b: ObjectiveStanding): number {
  return (a.fades_in_days ?? Infinity) - (b.fades_in_days ?? Infinity) || 0;
}
