import { allLessons } from '$lib/course';
import { isTaught, questionsToday, type DailySet, type Days } from '$lib/practice';
import type { LearnerRecord } from '$lib/wire';
import { QUESTIONS } from './questions';

/** Seeds are drawn from so many: two learners hardly ever get the same question. */
const SEEDS = 1_000_000;

export interface QuizWanted {
  set: DailySet;
  nextSeed: () => number;
  /** Whether the address asked for this one question, and not for the day's. */
  isOne: boolean;
  /** Whether nothing was learnt yet that the day could ask about. */
  isEarly: boolean;
}

/**
 * What to ask: the question that the address names (`?ask=mark-drag&seed=7`, so that one can be sent
 * to a friend), or the day's set. `random` draws from 0 to below 1.
 */
export function wantedOf(
  address: URLSearchParams,
  record: LearnerRecord,
  days: Days,
  random: () => number
): QuizWanted {
  const drawn = () => 1 + Math.floor(random() * SEEDS);
  const one = QUESTIONS.find(({ item }) => item === address.get('ask'));
  if (!one) {
    const set = questionsToday(record, QUESTIONS, days);
    const isEarly = set.due === 0 && !isTaught(record, allLessons());
    return { set, nextSeed: drawn, isOne: false, isEarly };
  }
  const seed = Number(address.get('seed'));
  const isSeed = Number.isInteger(seed) && seed >= 1 && seed <= SEEDS;
  const set = { items: [one], due: 0, missed: 0, fresh: 1 };
  return { set, nextSeed: isSeed ? () => seed : drawn, isOne: true, isEarly: false };
}
