import { allLessons, lessonNumber } from '$lib/course';
import { isTaught, questionsToday, type DailySet, type Days } from '$lib/practice';
import type { LearnerRecord } from '$lib/wire';
import { QUESTIONS } from './questions';

/** Seeds are drawn from so many: two learners hardly ever get the same question. */
const SEEDS = 1_000_000;

/** A seed of the day for a question: the same whenever the page is opened, and another for another learner. */
function seedOfDay(item: string, record: LearnerRecord, { today }: Days): number {
  const first = [...record.progress, ...record.tries].map(({ at }) => at).sort()[0] ?? '';
  const name = `${first} ${today} ${item}`;
  const sum = [...name].reduce((all, one) => (31 * all + one.charCodeAt(0)) % SUM_BELOW, 7);
  return 1 + (sum % SEEDS);
}
/** A prime, and so small that 31 times it is a whole number still. */
const SUM_BELOW = 2_147_483_647;

/** "Lesson 5", which teaches what is asked; the talk about safety by its title. */
export function taughtIn(item: string): string {
  const id = QUESTIONS.find((one) => one.item === item)?.lesson;
  const lesson = allLessons().find((one) => one.id === id);
  return lesson ? lessonNumber(lesson) || lesson.title : '';
}

export interface QuizWanted {
  set: DailySet;
  nextSeed: (item: string) => number;
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
    const lessons = allLessons();
    const set = questionsToday(record, QUESTIONS, days, lessons);
    const isEarly = set.due === 0 && !isTaught(record, lessons);
    return { set, nextSeed: (item) => seedOfDay(item, record, days), isOne: false, isEarly };
  }
  const seed = Number(address.get('seed'));
  const isSeed = Number.isInteger(seed) && seed >= 1 && seed <= SEEDS;
  const set = { items: [one], due: 0, missed: 0, fresh: 1 };
  return { set, nextSeed: isSeed ? () => seed : drawn, isOne: true, isEarly: false };
}
