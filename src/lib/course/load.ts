import { DataError } from '../scoring';
import { findLesson, inLessons } from './find-lesson';
import type { Lesson, LessonFolder } from './lesson';
import { folders } from './lessons';
import { parseLesson } from './parse-lesson';

/** All lessons in order. Throws DataError with the file, path and value of the first fault. */
export function loadLessons(from: readonly LessonFolder[] = folders): Lesson[] {
  const lessons = from.map(parseLesson).sort((a, b) => a.order - b.order);
  lessons.forEach((lesson, i) => checkPlace(lesson, lessons.slice(0, i)));
  return lessons;
}

let ours: Lesson[] | undefined;

/** All our lessons in order, checked once a process: that takes a tenth of a second. */
export function allLessons(): readonly Lesson[] {
  return (ours ??= loadLessons());
}

/** Tries are recorded by challenge id alone, so no two lessons may share one. */
function checkPlace(lesson: Lesson, before: readonly Lesson[]): void {
  const file = `lessons/${String(lesson.order).padStart(2, '0')}-${lesson.id}/lesson.ts`;
  const fault = (path: string, value: unknown, reason: string) => {
    throw new DataError(path, value, reason, file);
  };
  if (findLesson(lesson.id, before)) fault('id', lesson.id, 'another lesson has it');
  if (before.at(-1)?.order === lesson.order) fault('order', lesson.order, 'another lesson has it');
  lesson.builds_on.forEach((id, i) => {
    if (!findLesson(id, before)) fault(`builds_on.${i}`, id, 'no lesson before it has this id');
  });
  for (const { id } of lesson.challenges) {
    if (inLessons(id, before)) fault('challenges', id, 'another lesson has it');
  }
}
