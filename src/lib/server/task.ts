import * as v from 'valibot';
import { parseChallenge, parseData, type Challenge } from '../scoring';
import { label, line, words } from './shapes';

/**
 * Homework as it was set. Challenges are kept whole, with their own gear and water, so that a later
 * change of a lesson does not change what a client was asked.
 */
export interface Task {
  title: string;
  /** What the guide says to the client. */
  note: string;
  /** Ids of lessons to go through. */
  lessons: string[];
  challenges: Challenge[];
  /** How many tries of each challenge. */
  tries: number;
  /** Last day, as 2031-05-30, or none. */
  due: string | null;
}

const MOST_CHALLENGES = 12;

const schema = v.strictObject({
  title: line(80),
  note: words(1000),
  lessons: v.pipe(v.array(label), v.maxLength(30)),
  challenges: v.pipe(v.array(v.unknown()), v.maxLength(MOST_CHALLENGES)),
  tries: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(60)),
  due: v.nullable(v.pipe(v.string(), v.isoDate()))
});

/** Throws DataError with the path and value of the first fault. */
export function parseTask(input: unknown): Task {
  const task = parseData(schema, input);
  const challenges = task.challenges.map(parseChallenge);
  if (challenges.length + task.lessons.length === 0) {
    parseData(
      v.pipe(
        v.unknown(),
        v.check(() => false, 'must name a lesson or a challenge')
      ),
      null
    );
  }
  return { ...task, challenges };
}
