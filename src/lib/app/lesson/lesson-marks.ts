import { taskIdOf, type Lesson } from '$lib/course';
import { lessonStations } from '$lib/practice';
import type { LearnerRecord } from '$lib/wire';

/** What a list says of a lesson: how far it was done, and where to go on. */
export interface LessonMarks {
  readonly state: 'new' | 'begun' | 'done';
  /** Of its challenges, whether each was tried. */
  readonly tried: readonly boolean[];
  /** The station where it was left, '' before it was begun and once it is finished. */
  readonly at: string;
}

/** Reads it from the record alone: no try is run for a list. */
export function lessonMarks(lesson: Lesson, { progress, tries }: LearnerRecord): LessonMarks {
  const mine = progress.find((one) => one.lesson === lesson.id);
  const tried = lesson.challenges.map(({ id }) =>
    tries.some((one) => taskIdOf(one.challenge) === id)
  );
  const isDone = mine !== undefined && mine.finished !== null;
  const state = isDone ? 'done' : mine || tried.some(Boolean) ? 'begun' : 'new';
  return { state, tried, at: isDone ? '' : (mine?.reached.at(-1) ?? '') };
}

/** The step at which a lesson was left and is gone on with; null for one that is not under way. */
export function leftAt(lesson: Lesson, record: LearnerRecord): string | null {
  const { state, at } = lessonMarks(lesson, record);
  if (state !== 'begun' || at === '') return null;
  const best = new Map(record.tries.map(({ challenge }) => [taskIdOf(challenge), 0]));
  const station = lessonStations(lesson, record, best).find(({ id }) => id === at);
  return station?.isOpen && at !== 'about' ? at : null;
}
