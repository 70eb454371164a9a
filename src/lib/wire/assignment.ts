import * as v from 'valibot';
import { DataError, parseData } from '../scoring';
import { challenge } from './challenge';
import { day, line, shortName, readBy, whole, words } from './fields';

/** How much of the bait is seen, and how much is said, while homework is done. */
export const HOMEWORK_PHASES = ['seen', 'half_seen', 'unseen'] as const;
export type HomeworkPhase = (typeof HOMEWORK_PHASES)[number];

/**
 * Bounds of what comes in from outside. `seed`: generated questions are taken from so many, since
 * working one out costs as much as a dozen tries and whoever judges it works it out again. Homework draws
 * from the checked ones among them.
 */
export const MOST = {
  challenges: 12,
  lessons: 30,
  objectives: 30,
  questions: 20,
  tries: 60,
  /** What a client writes to the guide, of one homework. */
  words: 50,
  /** Sets of drags on the lawn. */
  lawns: 20,
  /** Days of the own log that a client adds, and spells of one. */
  days: 20,
  spells: 60,
  seed: 100,
  note: 1000,
  line: 80
};

/** So many drags make a set on the lawn: fewer say little of a hand, more are not done. */
export const LAWN_DRAGS = 10;
/** What a rod drags at most in one move, with room for a slip; more is a number in the wrong unit, m. */
export const LAWN_MOST_M = 15;
const LAWN_LEAST_M = 0.05;

/** Drags with a real rod on the lawn: how far each is meant to go. */
const lawnTask = v.strictObject({
  meant_m: v.pipe(v.number(), v.minValue(LAWN_LEAST_M), v.maxValue(LAWN_MOST_M / 3))
});

const names = (most: number, what: string) =>
  v.pipe(
    v.array(shortName),
    v.maxLength(most, `too many ${what}`),
    v.check((all) => isEachOnce(all), 'names one twice')
  );

const shape = v.strictObject({
  title: line(MOST.line),
  /** Who asks, as the client knows them; may be empty. */
  from: line(MOST.line, 0),
  note: words(MOST.note),
  /** Ids of lessons to go through. */
  lessons: names(MOST.lessons, 'lessons'),
  /** Ids of what the questions are about. */
  objectives: names(MOST.objectives, 'objectives'),
  /** How many questions about each objective. */
  questions: whole(1, MOST.questions),
  /** How many tries of each challenge. */
  tries: whole(1, MOST.tries),
  phase: v.picklist(HOMEWORK_PHASES),
  /** Last day, or none. */
  due: v.nullable(day),
  /** Left out or null where nothing is asked on the lawn. */
  lawn: v.optional(v.nullable(lawnTask)),
  challenges: v.pipe(v.array(challenge), v.maxLength(MOST.challenges, 'too many challenges'))
});

/**
 * What a guide asks of a client, in a link or on a server. Challenges are whole, with the guide's own
 * gear and water, so that a later change of a lesson does not change what a client was asked.
 */
export type Assignment = v.InferOutput<typeof shape>;

function readAssignment(input: unknown): Assignment {
  const read = parseData(shape, input);
  const { challenges, lessons, objectives, lawn } = read;
  if (challenges.length + lessons.length + objectives.length === 0 && !lawn) {
    throw new DataError('challenges', [], 'must ask for a lesson, a challenge or an objective');
  }
  const ids = challenges.map(({ id }) => id);
  if (!isEachOnce(ids)) throw new DataError('challenges', ids, 'names one twice');
  return read;
}

function isEachOnce(all: readonly string[]): boolean {
  return new Set(all).size === all.length;
}

export const assignment = readBy(readAssignment);

const storedChallenge = v.looseObject({
  visibility: v.optional(v.picklist(HOMEWORK_PHASES)),
  setup: v.optional(v.looseObject({}))
});

/** The model runs as finely as it does for everybody, whatever was stored before that was refused. */
function withoutNumerics(old: v.InferOutput<typeof storedChallenge>): unknown {
  if (old.setup?.numerics === undefined) return old;
  const setup = { ...old.setup };
  delete setup.numerics;
  return { ...old, setup };
}

/**
 * The same as it was stored before it had objectives, and on a server before it had a phase: each
 * challenge said then what is seen of it, all of them the same.
 */
export const storedAssignment = v.pipe(
  v.looseObject({ challenges: v.array(storedChallenge) }),
  v.transform((old): unknown => {
    const phase = old.challenges[0]?.visibility ?? 'seen';
    const challenges = old.challenges.map(withoutNumerics);
    return { from: '', objectives: [], questions: 1, phase, ...old, challenges };
  }),
  assignment
);

/** One thing that is asked: a lesson, a challenge, questions about an objective, or the lawn. */
export interface AskedPart {
  kind: 'lesson' | 'challenge' | 'questions' | 'lawn';
  /** Of the lesson, the challenge or the objective; of the lawn there is one. */
  id: string;
}

/** All that is asked, in the order in which phone, server and guide count and list it. */
export function askedParts({
  lessons,
  challenges,
  objectives,
  lawn
}: Pick<Assignment, 'lessons' | 'objectives' | 'lawn'> & {
  challenges: readonly { id: string }[];
}): AskedPart[] {
  const of = (kind: AskedPart['kind'], ids: readonly string[]) => ids.map((id) => ({ kind, id }));
  return [
    ...of('lesson', lessons),
    ...of(
      'challenge',
      challenges.map(({ id }) => id)
    ),
    ...of('questions', objectives),
    ...of('lawn', lawn ? ['lawn'] : [])
  ];
}
