import type { Lesson } from '$lib/course';
import type { Objective } from '$lib/course/items';
import { parseSetup, type Setup } from '$lib/model';
import { isInAnyGear, ownGearId } from '$lib/practice';
import { MOST, type Assignment, type HomeworkPhase } from '$lib/wire';
import type { Challenge, OwnSpread } from '$lib/scoring';

/** A challenge that may be asked, and how. */
export interface DraftChoice {
  challenge: Challenge;
  isSet: boolean;
  /** Another gear and water than the lesson's; null is the lesson's own. */
  setup: Setup | null;
  /** What is left open of that gear, where it is an outfit with numbers of its own. */
  spread?: OwnSpread;
}

/** What a lesson has to ask: itself, its challenges, and questions about what it teaches. */
export interface Offer {
  id: string;
  title: string;
  minutes: number;
  isSet: boolean;
  choices: DraftChoice[];
  objectives: { id: string; says: string; isSet: boolean }[];
}

/** Homework as a guide is putting it together. */
export interface HomeworkDraft {
  title: string;
  from: string;
  note: string;
  offers: Offer[];
  tries: number | null;
  questions: number | null;
  phase: HomeworkPhase;
  /** A day, or empty for none. */
  due: string;
  /** Drags with a real rod on the lawn, and how far each is meant to go. */
  lawn: { isSet: boolean; meant_m: number };
}

export const PHASE_NAMES: Record<HomeworkPhase, string> = {
  seen: 'Jig in sight',
  half_seen: 'In sight and hidden in turn',
  unseen: 'Jig hidden'
};

/** What a hand is first asked for, everywhere: a foot. */
const LAWN_MEANT_M = 0.3048;

interface First {
  from?: string;
  /** A day, or empty for none. */
  due?: string;
  /** Id of the challenge to begin with; left out or unknown, nothing is chosen. */
  challenge?: string;
}

export function firstDraft(
  lessons: readonly Lesson[],
  objectives: readonly Objective[],
  { from = '', due = '', challenge: first = '' }: First = {}
): HomeworkDraft {
  return {
    title: '',
    from,
    note: '',
    offers: lessons.map(({ id, title, minutes, challenges }) => ({
      ...{ id, title, minutes, isSet: false },
      choices: challenges.map((challenge) => {
        return { challenge, isSet: challenge.id === first, setup: null };
      }),
      objectives: objectives
        .filter(({ lesson }) => lesson === id)
        .map((one) => ({ id: one.id, says: one.says, isSet: false }))
    })),
    tries: 8,
    questions: 4,
    phase: 'half_seen',
    due,
    lawn: { isSet: false, meant_m: LAWN_MEANT_M }
  };
}

/**
 * Homework that was set before, to be set again, changed or not. What the course no longer has is left
 * out; a challenge in a guide's own gear keeps it.
 */
export function draftFrom(
  { title, from, note, lessons: asked, challenges, objectives: about, ...how }: Assignment,
  lessons: readonly Lesson[],
  objectives: readonly Objective[],
  due: string
): HomeworkDraft {
  const { tries, questions, phase, lawn } = how;
  const blank = firstDraft(lessons, objectives, { from, due });
  const offers = blank.offers.map((offer) => ({
    ...offer,
    isSet: asked.includes(offer.id),
    choices: offer.choices.map((choice) => {
      const { id } = choice.challenge;
      const set = challenges.find((one) => isInAnyGear(one.id, id));
      if (!set || set.id === id) return { ...choice, isSet: set !== undefined };
      return { ...choice, isSet: true, setup: parseSetup(set.setup), spread: set.spread };
    }),
    objectives: offer.objectives.map((one) => ({ ...one, isSet: about.includes(one.id) }))
  }));
  const kept = lawn ? { isSet: true, ...lawn } : blank.lawn;
  return { ...blank, title, note, offers, tries, questions, phase, lawn: kept };
}

/** The setup that a choice has now, all defaults filled in. */
export function chosenSetupOf({ challenge, setup }: DraftChoice): Setup {
  return setup ?? parseSetup(challenge.setup);
}

/** The challenges that are asked. */
export function chosenIn({ offers }: HomeworkDraft): DraftChoice[] {
  return offers.flatMap(({ choices }) => choices).filter(({ isSet }) => isSet);
}

/** How much of a lesson's offer is asked. */
export function askedCountOf({ isSet, choices, objectives }: Offer): number {
  return [{ isSet }, ...choices, ...objectives].filter((one) => one.isSet).length;
}

/** Whether anything is asked at all. */
export function asksAnything({ offers, lawn }: HomeworkDraft): boolean {
  return lawn.isSet || offers.some((offer) => askedCountOf(offer) > 0);
}

/** Title when the guide says nothing: by what is asked, the first of it by name. */
export function titleFor({ offers, lawn }: HomeworkDraft): string {
  const titles = offers.flatMap(({ isSet, title, choices, objectives }) => [
    ...(isSet ? [title] : []),
    ...choices.filter((one) => one.isSet).map(({ challenge }) => challenge.title),
    ...objectives.filter((one) => one.isSet).map(() => `Questions: ${title}`)
  ]);
  const [first, ...others] = [...new Set([...titles, ...(lawn.isSet ? ['Ten on the lawn'] : [])])];
  if (!first) return 'Homework';
  return others.length > 0 ? `${first} and ${others.length} more` : first;
}

/** The homework that the draft stands for. @param suffix for challenges in another gear, see ownGearId */
export function draftedAssignment(draft: HomeworkDraft, suffix: string): Assignment {
  const { title, from, note, offers, tries, questions, phase, due, lawn } = draft;
  const objectives = offers.flatMap((offer) => offer.objectives);
  return {
    title: title.trim() || titleFor(draft),
    from: from.trim(),
    note: note.trim(),
    lessons: idsOf(offers),
    challenges: chosenIn(draft).map(({ challenge, setup, spread }) => {
      if (!setup) return challenge;
      const id = ownGearId(challenge.id, suffix);
      return { ...challenge, id, setup: sharedSetup(setup), ...(spread && { spread }) };
    }),
    objectives: idsOf(objectives),
    questions: inRange(questions, MOST.questions),
    tries: inRange(tries, MOST.tries),
    phase,
    due: due === '' ? null : due,
    ...(lawn.isSet && { lawn: { meant_m: lawn.meant_m } })
  };
}

/** As it crosses a boundary: how finely the model runs is not the guide’s to say. */
function sharedSetup(setup: Setup): Challenge['setup'] {
  const shared: Challenge['setup'] = { ...setup };
  delete shared.numerics;
  return shared;
}

function idsOf(all: readonly { id: string; isSet: boolean }[]): string[] {
  return all.filter(({ isSet }) => isSet).map(({ id }) => id);
}

/** An emptied field counts as one. */
function inRange(count: number | null, most: number): number {
  return Math.min(most, Math.max(1, Math.round(count ?? 1)));
}
