import * as v from 'valibot';
import { OBJECTIVES } from '../course/items/objectives';
import { DataError, parseChallenge, parseData, type Challenge } from '../scoring';
import { line, nameSchema, within, words } from './fields';

/** How much of the bait is seen, and how much is said, while homework is done. */
export const HOMEWORK_PHASES = ['seen', 'half_seen', 'unseen'] as const;
export type HomeworkPhase = (typeof HOMEWORK_PHASES)[number];

/**
 * What a guide asks of a client, in a link or on a server. Challenges are whole, with the guide's own
 * gear and water, so that a later change of a lesson does not change what a client was asked.
 */
export interface Assignment {
  title: string;
  /** Who asks, as the client knows them; may be empty. */
  from: string;
  note: string;
  /** Ids of lessons to go through. */
  lessons: string[];
  challenges: Challenge[];
  /** Ids of what the questions are about. */
  objectives: string[];
  /** How many questions about each objective. */
  questions: number;
  /** How many tries of each challenge. */
  tries: number;
  phase: HomeworkPhase;
  /** Last day, as 2031-05-30, or none. */
  due: string | null;
}

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
  seed: 100,
  note: 1000,
  line: 80
};

const count = (most: number) =>
  v.pipe(
    v.number(),
    v.integer('must be a whole number'),
    v.minValue(1, `must be from 1 to ${most}`),
    v.maxValue(most, `must be from 1 to ${most}`)
  );

const names = (most: number, what: string) =>
  v.pipe(
    v.array(nameSchema),
    v.maxLength(most, `too many ${what}`),
    v.check((all) => isEachOnce(all), 'names one twice')
  );

const schema = v.strictObject({
  title: line(MOST.line),
  from: line(MOST.line, 0),
  note: words(MOST.note),
  lessons: names(MOST.lessons, 'lessons'),
  challenges: v.pipe(v.array(v.unknown()), v.maxLength(MOST.challenges, 'too many challenges')),
  objectives: names(MOST.objectives, 'objectives'),
  questions: count(MOST.questions),
  tries: count(MOST.tries),
  phase: v.picklist(HOMEWORK_PHASES),
  due: v.nullable(v.pipe(v.string(), v.isoDate('must be a day like 2031-05-30')))
});

/** Throws DataError with the path, from `field` on, and the value of the first fault. */
export function parseAssignment(input: unknown, field = ''): Assignment {
  return within(field, () => {
    const { challenges: given, ...rest } = parseData(schema, input);
    const challenges = given.map((one, i) => within(`challenges.${i}`, () => parseChallenge(one)));
    const assignment = { ...rest, challenges };
    refuseUnknown(assignment);
    return assignment;
  });
}

function refuseUnknown({ challenges, lessons, objectives }: Assignment): void {
  if (challenges.length + lessons.length + objectives.length === 0) {
    throw new DataError('challenges', [], 'must ask for a lesson, a challenge or an objective');
  }
  const ids = challenges.map(({ id }) => id);
  if (!isEachOnce(ids)) throw new DataError('challenges', ids, 'names one twice');
  for (const [i, id] of objectives.entries()) {
    if (OBJECTIVES.some((one) => one.id === id)) continue;
    throw new DataError(`objectives.${i}`, id, 'no question is about this');
  }
}

/** Letters that set apart a challenge in a guide's own gear. */
const OWN_GEAR = /^-[0-9a-z]{8}$/;

/**
 * In another gear a challenge is another one, and has an id of its own: tries are kept by id.
 * @param suffix eight small letters or digits, new each time
 */
export function ownGearId(id: string, suffix: string): string {
  return `${id}-${suffix}`;
}

/** Whether what was asked is the course's challenge `id`, in whatever gear. */
export function isInAnyGear(asked: string, id: string): boolean {
  return asked === id || (asked.startsWith(id) && OWN_GEAR.test(asked.slice(id.length)));
}

function isEachOnce(all: readonly string[]): boolean {
  return new Set(all).size === all.length;
}

type Added = 'from' | 'objectives' | 'questions' | 'phase';
/** Homework as it was stored before it had objectives, and on a server before it had a phase. */
export type OldAssignment = Omit<Assignment, Added> & Partial<Pick<Assignment, Added>>;

/** The same with what it lacks. Then each challenge said what is seen of it, all of them the same. */
export function filledIn(old: OldAssignment): Assignment {
  const phase = old.challenges[0]?.visibility ?? 'seen';
  return { from: '', objectives: [], questions: 1, phase, ...old };
}
