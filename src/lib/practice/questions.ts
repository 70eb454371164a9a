import { dailySet, type Askable, type DailySet, type Days } from './review';
import type { Lesson } from '../course';
import type { LearnerRecord } from '../wire';
import { lessonMarks } from './lesson-marks';

/** What can be asked, with the lesson that teaches it. */
export interface Question extends Askable {
  lesson: string;
}

/** How a day's questions have gone so far. */
export interface AnsweredToday {
  count: number;
  right: number;
  /** What can be asked again, with the seed it was asked by, in the order of the asking. */
  missed: readonly { item: string; seed: number }[];
}

/** How the day has gone so far: what was answered before a page was opened again counts as well. */
export function answeredToday(
  { answers }: Pick<LearnerRecord, 'answers'>,
  days: Days
): AnsweredToday {
  const all = answers.filter(({ at }) => days.of(at) === days.today);
  const missed = all.filter(({ right }) => !right);
  return {
    count: all.length,
    right: all.length - missed.length,
    missed: missed.map(({ item, seed }) => ({ item, seed }))
  };
}

/** The questions for today; new ones are about lessons that were done. */
export function questionsToday(
  record: LearnerRecord,
  questions: readonly Question[],
  days: Days,
  lessons: Lessons
): DailySet<Question> {
  const done = lessons.filter((lesson) => isDone(lesson, record)).map(({ id }) => id);
  return dailySet(questions, record.answers, days, ({ lesson }) => done.includes(lesson));
}

type Lessons = readonly Pick<Lesson, 'id' | 'challenges'>[];
type Done = Pick<LearnerRecord, 'progress' | 'tries'>;

const isGoneThrough = (lesson: string, { progress }: Done) =>
  progress.some(({ lesson: id, finished }) => id === lesson && finished !== null);

/** Gone through, or each of its tries passed, whatever is left to read. */
function isDone(lesson: Lessons[number], record: Done): boolean {
  const { tries } = lessonMarks(lesson, record);
  const isPassed = tries.length > 0 && tries.every((one) => one === 'passed');
  return isPassed || isGoneThrough(lesson.id, record);
}

/**
 * Questions come after something was learnt: a lesson was gone through, and one of its tries was made; or
 * each of its tries was passed, whatever is left to read.
 */
export function isTaught(record: Done, lessons: Lessons): boolean {
  return lessons.some((lesson) => {
    const { tries } = lessonMarks(lesson, record);
    return tries.some((one) => one === 'passed' || one === 'missed') && isDone(lesson, record);
  });
}
