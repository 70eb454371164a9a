import { lessonOf, SOURCES } from '$lib/course/items';
import type { Question } from '$lib/practice';

/** All that can be asked, each with the lesson that teaches it. */
export const QUESTIONS: readonly Question[] = SOURCES.map((one) => ({
  ...one,
  lesson: lessonOf(one.objective)
}));
