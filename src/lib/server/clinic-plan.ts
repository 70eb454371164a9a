import type { FieldSection, Lesson } from '../course';
import { drawCheckedSeed } from '../course/items';
import { PARALLELS } from './clinic-parallel';
import { Refusal } from './faults';
import { type ClinicOffer, PLAN_MINUTES, type PlanMinutes, type Round } from '../wire';

/** Prepared: what a club gets most from in so long. */
export const PREPARED: Readonly<Record<PlanMinutes, readonly string[]>> = {
  45: ['one-foot', 'speed'],
  90: ['one-foot', 'slack', 'speed', 'hops']
};

/** By hand: a vote, the talk, a second vote and the run; one vote more; ten tries; a drill told. */
const MINUTES = { predict: 6, ask: 3, try: 7, field: 2, again: 5, pause: 5, ends: 2 };
/** How long one lesson takes a room. */
const PART_MINUTES = MINUTES.predict + MINUTES.ask + MINUTES.try + MINUTES.field;

const welcome: Round = {
  kind: 'talk',
  title: 'Before we start',
  says: [
    'No ranking, and no names.',
    'Answer on your own first. Then talk.',
    'Phones only: no real rods in the room.',
    'No phone? Raise a hand.'
  ],
  minutes: MINUTES.ends
};
const pause: Round = {
  kind: 'talk',
  title: 'Five minutes',
  says: ['Stand up, and look at something far away.'],
  minutes: MINUTES.pause
};
const goodbye: Round = {
  kind: 'talk',
  title: 'Before you go',
  says: [
    'Keep one thing: the move of yours that you’ll change.',
    'The drills are for your own rod, on dry land first, with no hook on the line.',
    'Before you pick one up, read Safety first.',
    'Your tries are in the record on your phone. The link on its screen takes them to another device.'
  ],
  minutes: MINUTES.ends
};

/** What a plan of so many minutes spends on all but its lessons. */
function frameMinutes(minutes: PlanMinutes): number {
  const pauses = minutes > PLAN_MINUTES[0] ? MINUTES.pause : 0;
  return 2 * MINUTES.ends + MINUTES.again + pauses;
}

/** Lessons that a room can do: with a question first, something to try, and a drill to take along. */
export function roomLessons(lessons: readonly Lesson[]): Lesson[] {
  return lessons.filter(({ id, sections, challenges }) => {
    const isAsked = sections.some(({ kind }) => kind === 'predict');
    return isAsked && challenges.length > 0 && id in PARALLELS;
  });
}

export function clinicOffer(lessons: readonly Lesson[]): ClinicOffer {
  return {
    lessons: roomLessons(lessons).map(({ id, title }) => ({ id, title })),
    prepared: PREPARED,
    part: PART_MINUTES,
    frame: { 45: frameMinutes(45), 90: frameMinutes(90) }
  };
}

/**
 * What to do in so many minutes: of each chosen lesson the question, one like it, a challenge and the
 * drill for the water, in the order of the course; at half-time of a long one a pause; last the first
 * challenge again, since a hand shows what it has learned only after something else was done.
 * @param random 0–1, draws the figures of the questions
 * @throws Refusal for a lesson that a room cannot do, and for more than the minutes hold
 */
export function planFor(
  minutes: PlanMinutes,
  chosen: readonly string[],
  lessons: readonly Lesson[],
  random: () => number
): Round[] {
  const open = roomLessons(lessons);
  const stranger = chosen.find((id) => !open.some((lesson) => lesson.id === id));
  if (stranger !== undefined) throw new Refusal(422, `lessons: a room can’t do "${stranger}".`);
  const parts = open.filter(({ id }) => chosen.includes(id)).map((one) => roundsOf(one, random));
  const takes = frameMinutes(minutes) + parts.length * PART_MINUTES;
  if (parts.length === 0) throw new Refusal(422, 'lessons: choose at least one.');
  if (takes > minutes) throw new Refusal(422, `lessons: they take ${takes} minutes.`);
  const half = Math.ceil(parts.length / 2);
  const rests = minutes > PLAN_MINUTES[0] && parts.length > 1 ? [pause] : [];
  const rounds = [...parts.slice(0, half).flat(), ...rests, ...parts.slice(half).flat()];
  return [welcome, ...rounds, ...onceMore(parts), goodbye];
}

function roundsOf({ id, title, sections, challenges }: Lesson, random: () => number): Round[] {
  const section = sections.findIndex(({ kind }) => kind === 'predict');
  const drill = sections.find((one) => one.kind === 'field');
  const seed = drawCheckedSeed(random);
  return [
    { kind: 'predict', lesson: id, section, minutes: MINUTES.predict },
    { kind: 'ask', lesson: id, item: PARALLELS[id].item, seed, minutes: MINUTES.ask },
    { kind: 'try', lesson: id, challenge: challenges[0].id, minutes: MINUTES.try },
    ...(drill ? [drillOf(title, drill)] : [])
  ];
}

/** Called by its lesson as well, and by where: nobody swings a rod in a room. */
function drillOf(lesson: string, { needs, steps }: FieldSection): Round {
  const where = /no hook|hook cut off/.test(needs.join()) ? 'at home, no hook' : 'another day';
  return {
    kind: 'talk',
    title: `${lesson}: ${where}`,
    says: steps,
    isDrill: true,
    minutes: MINUTES.field
  };
}

function onceMore(parts: readonly Round[][]): Round[] {
  const first = parts.length > 1 ? parts[0].find(({ kind }) => kind === 'try') : undefined;
  return first?.kind === 'try' ? [{ ...first, again: true, minutes: MINUTES.again }] : [];
}
