import { dailySet, type Askable, type DailySet, type Days } from './review';
import type { Lesson } from '../course';
import type { LearnerRecord } from '../wire';
import { lessonMarks } from './lesson-marks';

/** What can be asked, with the lesson that teaches it. */
export interface Question extends Askable {
  lesson: string;
}

/** How the day has gone so far: what was answered before a page was opened again counts as well. */
export function answeredToday(
  { answers }: Pick<LearnerRecord, 'answers'>,
  days: Days
): { count: number; right: number } {
  const all = answers.filter(({ at }) => days.of(at) === days.today);
  return { count: all.length, right: all.filter(({ right }) => right).length };
}

/** The questions for today; what was met in a lesson is asked before what was not. */
export function questionsToday(
  { answers, progress }: LearnerRecord,
  questions: readonly Question[],
  days: Days
): DailySet<Question> {
  const met = new Set(progress.map(({ lesson }) => lesson));
  return dailySet(questions, answers, days, ({ lesson }) => met.has(lesson));
}

/**
 * Questions come after something was learnt: a lesson was gone through, and one of its tries was made; or
 * each of its tries was passed, whatever is left to read.
 */
export function isTaught(
  record: Pick<LearnerRecord, 'progress' | 'tries'>,
  lessons: readonly Pick<Lesson, 'id' | 'challenges'>[]
): boolean {
  return lessons.some((lesson) => {
    const { tries } = lessonMarks(lesson, record);
    const isTried = tries.some((one) => one === 'passed' || one === 'missed');
    const isGoneThrough = record.progress.some(
      ({ lesson: id, finished }) => id === lesson.id && finished !== null
    );
    return isTried && (isGoneThrough || tries.every((one) => one === 'passed'));
  });
}
