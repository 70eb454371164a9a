import type { Challenge } from '../scoring';
import type { Lesson } from './lesson';
import { tryNamed } from './nth-try';

/** The lesson at an address, or undefined. */
export function findLesson(id: string, lessons: readonly Lesson[]): Lesson | undefined {
  return lessons.find((lesson) => lesson.id === id);
}

/** A challenge of these lessons by its id, or undefined. */
export function inLessons(id: string, lessons: readonly Lesson[]): Challenge | undefined {
  return tryNamed(
    id,
    lessons.flatMap(({ challenges }) => challenges)
  );
}
