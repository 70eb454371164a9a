import { compute } from '$lib/compute/browser';
import { ScenarioError } from '$lib/model';
import { travelOf } from '$lib/practice';
import type { Challenge } from '$lib/scoring';
import { chosenIn, type HomeworkDraft } from './draft';

/** A challenge that the gear chosen for it may spoil: none can do it, or nobody knows. */
export interface Doubt {
  title: string;
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
  canBeDone: CanBeDone = (challenge) => compute.ask('canBeDone', challenge)
): Promise<Doubt[]> {
  const own = chosenIn(draft)
    .flatMap(({ challenge, setup }) => (setup ? [{ ...challenge, setup }] : []))
    .filter((one) => travelOf(one));
  const kinds = await Promise.all(own.map((one) => doubtOf(one, canBeDone)));
  return own.flatMap(({ title }, i) => {
    const kind = kinds[i];
    return kind ? [{ title, kind }] : [];
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

/** A sentence for each kind of doubt. */
export function doubtTexts(doubts: readonly Doubt[]): string[] {
  const titles = (kind: Doubt['kind']) =>
    doubts.filter((one) => one.kind === kind).map(({ title }) => `“${title}”`);
  const [impossible, unknown] = [titles('impossible'), titles('unknown')];
  return [
    ...(impossible.length > 0
      ? [
          `With your gear no single move of the rod does ${impossible.join(', ')}: change the gear, or leave it as a riddle.`
        ]
      : []),
    ...(unknown.length > 0
      ? [
          `Whether your gear can do ${unknown.join(', ')} is not known: the lesson’s own moves do not do it there. Try it first, or change the gear.`
        ]
      : [])
  ];
}
