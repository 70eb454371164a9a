import type { Lesson } from './lesson';

/** "Lesson 3"; empty for the talk about safety, which comes before all of them and has no number. */
export function lessonNumber({ order }: Pick<Lesson, 'order'>): string {
  return order === 0 ? '' : `Lesson ${order}`;
}

/** "Lesson 3, Slack", where it is gone on to from another. */
export function nameInOrder(lesson: Pick<Lesson, 'order' | 'title'>): string {
  return [lessonNumber(lesson), lesson.title].filter(Boolean).join(', ');
}
