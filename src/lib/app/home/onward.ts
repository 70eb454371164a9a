import { allLessons, lessonNumber } from '$lib/course';
import { nextLesson } from '$lib/practice';
import type { LearnerRecord } from '$lib/wire';

/** Where a try that was made for itself goes on, and what it is called there; null when all lessons are through. */
export interface Onward {
  id: string;
  name: string;
}

export function lessonOnward(record: LearnerRecord): Onward | null {
  const next = nextLesson(record, allLessons());
  return next && { id: next.id, name: lessonNumber(next) || next.title };
}
