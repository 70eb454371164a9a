import type { Lesson } from '../course';
import type { LearnerRecord } from '../wire';
import { lessonMarks } from './lesson-marks';

/**
 * The lesson in hand; else, as at a lesson's end, the one that comes after the last that was gone through, and
 * the first that is left where none does. Null after the last.
 */
export function nextLesson(record: LearnerRecord, lessons: readonly Lesson[]): Lesson | null {
  const left = lessons.filter((lesson) => !lessonMarks(lesson, record).isThrough);
  // What has nothing to try, as the talk about safety, is for the day before a real rod.
  const toTry = left.filter(({ challenges }) => challenges.length > 0);
  const through = lessons.findIndex(({ id }) => id === lastThrough(record, lessons)?.lesson);
  const onward = toTry.find((lesson) => lessons.indexOf(lesson) > through);
  return lessonInHand(record, lessons)?.lesson ?? onward ?? toTry[0] ?? left[0] ?? null;
}

function lastThrough({ progress, tries }: LearnerRecord, lessons: readonly Lesson[]) {
  return progress
    .filter(({ lesson: id }) =>
      lessons.some((one) => one.id === id && lessonMarks(one, { progress, tries }).isThrough)
    )
    .sort((a, b) => (a.at < b.at ? 1 : -1))[0];
}

/** The lesson that was begun and is not through, and when it was last worked at; the last of several. */
export function lessonInHand(
  record: LearnerRecord,
  lessons: readonly Lesson[]
): { lesson: Lesson; at: string } | null {
  const begun = lessons.flatMap((lesson) => {
    const progress = record.progress.find((one) => one.lesson === lesson.id);
    if (!progress || lessonMarks(lesson, record).isThrough) return [];
    const own = record.tries.filter(({ challenge }) =>
      lesson.challenges.some(({ id }) => id === challenge)
    );
    return [{ lesson, at: latest([progress.at, ...own.map(({ at }) => at)]) }];
  });
  return begun.sort((a, b) => (a.at < b.at ? 1 : -1))[0] ?? null;
}

/** Of times as they are written in a record, which sort as text. */
export function latest(times: readonly string[]): string {
  return [...times].sort().at(-1) ?? '';
}
