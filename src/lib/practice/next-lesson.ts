import type { Lesson } from '../course';
import type { LearnerRecord } from '../wire';
import { lessonMarks } from './lesson-marks';

/** The lesson in hand, or the first that is not through; null after the last. */
export function nextLesson(record: LearnerRecord, lessons: readonly Lesson[]): Lesson | null {
  const left = lessons.filter((lesson) => !lessonMarks(lesson, record).isThrough);
  // What has nothing to try, as the talk about safety, is for the day before a real rod.
  const first = left.find(({ challenges }) => challenges.length > 0) ?? left[0] ?? null;
  return lessonInHand(record, lessons)?.lesson ?? first;
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
