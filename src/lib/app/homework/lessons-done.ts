import type { LearnerRecord } from '$lib/wire';

/**
 * Of these lessons, those that are done: gone through, and every try of theirs passed. What a lesson asks
 * is fetched with the rest of the work, so the answer comes a moment later.
 */
export async function lessonsDone(
  ids: readonly string[],
  record: LearnerRecord
): Promise<string[]> {
  const [{ allLessons, findLesson }, { lessonMarks }] = await Promise.all([
    import('$lib/course'),
    import('$lib/practice/lesson-marks')
  ]);
  return ids.filter((id) => {
    const lesson = findLesson(id, allLessons());
    return lesson !== undefined && lessonMarks(lesson, record).state === 'done';
  });
}
