import { compute } from '$lib/compute/browser';
import { ScenarioError, type Setup } from '$lib/model';
import { travelOf } from '$lib/practice';
import type { Challenge, Units } from '$lib/scoring';
import { outfitIn } from '$lib/app/gear';
import type { Outfit } from '$lib/wire';
import { gearText } from './asked-text';
import { chosenIn, type HomeworkDraft } from './draft';

/** A challenge that the gear chosen for it may spoil: none can do it, or nobody knows. */
export interface Doubt {
  title: string;
  /** What that gear is called. */
  gear: string;
  kind: 'impossible' | 'unknown';
}

/** Whether a challenge can be done, see compute/jobs/correct.ts. */
type CanBeDone = (challenge: Challenge) => Promise<'yes' | 'no' | 'unknown'>;

/**
 * What is doubtful in a draft: of the challenges with a distance those in another gear than the
 * lesson's. Each takes the model up to a second, off the page.
 */
export async function doubtsOf(
  draft: HomeworkDraft,
  nameOf: (setup: Setup) => string,
  canBeDone: CanBeDone = (challenge) => compute.ask('canBeDone', challenge)
): Promise<Doubt[]> {
  const own = chosenIn(draft)
    .flatMap(({ challenge, setup }) => (setup ? [{ ...challenge, setup }] : []))
    .filter((one) => travelOf(one));
  const kinds = await Promise.all(own.map((one) => doubtOf(one, canBeDone)));
  return own.flatMap(({ title, setup }, i) => {
    const kind = kinds[i];
    return kind ? [{ title, gear: nameOf(setup), kind }] : [];
  });
}

async function doubtOf(challenge: Challenge, canBeDone: CanBeDone): Promise<Doubt['kind'] | null> {
  try {
    const answer = await canBeDone(challenge);
    if (answer === 'yes') return null;
    return answer === 'no' ? 'impossible' : 'unknown';
  } catch (error) {
    // A line that finds no rest in that gear: the model begins no try.
    if (error instanceof ScenarioError) return 'impossible';
    throw error;
  }
}

/** Gear by its owner's name for it, else by weight and water. */
export function gearName(setup: Setup, outfits: readonly Outfit[], units: Units): string {
  return outfitIn(setup, outfits)?.name ?? gearText({ setup }, units);
}

const SENTENCES: Record<Doubt['kind'], (gear: string, titles: string) => string> = {
  impossible: (gear, titles) => `${gear}: no single rod move does ${titles}. Change that gear.`,
  unknown: (gear, titles) =>
    `${gear}: the lesson’s own moves don’t do ${titles} there. Try it first, or change that gear.`
};

/** A sentence for each gear, and each kind of doubt about it. */
export function doubtTexts(doubts: readonly Doubt[]): string[] {
  const about = ({ kind, gear }: Doubt) => `${kind} ${gear}`;
  const firsts = doubts.filter(
    (one, i) => doubts.findIndex((other) => about(other) === about(one)) === i
  );
  return firsts.map((first) => {
    const alike = doubts.filter((one) => about(one) === about(first));
    return SENTENCES[first.kind](first.gear, alike.map(({ title }) => `“${title}”`).join(', '));
  });
}
