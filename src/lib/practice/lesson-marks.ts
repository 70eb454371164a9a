import type { Lesson } from '../course';
import { taskIdOf } from '../course/nth-try';
import { PASS_MARK } from '../scoring';
import type { LearnerRecord, StoredTry } from '../wire';
import { lessonStations } from './lesson-progress';

/** What a list says of a lesson: how far it was done, and where to go on. */
export interface LessonMarks {
  /** Done is one that was gone through and whose every challenge was passed. */
  readonly state: 'new' | 'begun' | 'done';
  /** Of its challenges, whether each was passed. */
  readonly passed: readonly boolean[];
  /** The station where it was left, '' before it was begun and once it is finished. */
  readonly at: string;
}

/** Reads it from the record alone: no try is run for a list. */
export function lessonMarks(lesson: Lesson, { progress, tries }: LearnerRecord): LessonMarks {
  const mine = progress.find((one) => one.lesson === lesson.id);
  const made = lesson.challenges.map(({ id }) =>
    tries.filter((one) => taskIdOf(one.challenge) === id)
  );
  const passed = made.map((tries) => tries.some(isPassed));
  const isFinished = mine !== undefined && mine.finished !== null;
  const isBegun = mine !== undefined || made.some(({ length }) => length > 0);
  const state = isFinished && passed.every(Boolean) ? 'done' : isBegun ? 'begun' : 'new';
  return { state, passed, at: isFinished ? '' : (mine?.reached.at(-1) ?? '') };
}

/** A try of before marks were kept with it counts as it always did. */
const isPassed = ({ marks }: StoredTry) => marks === undefined || marks >= PASS_MARK;

/** What a list says beside a lesson that was begun. */
export function marksText({ state, passed }: LessonMarks): string {
  const count = passed.filter(Boolean).length;
  if (state === 'begun' && count > 0) return `${count} of ${passed.length} passed`;
  return state === 'new' ? '' : state;
}

/** The step at which a lesson was left and is gone on with; null for one that is not under way. */
export function leftAt(lesson: Lesson, record: LearnerRecord): string | null {
  const { state, at } = lessonMarks(lesson, record);
  if (state !== 'begun' || at === '') return null;
  const best = new Map(record.tries.map(({ challenge }) => [taskIdOf(challenge), 0]));
  const station = lessonStations(lesson, record, best).find(({ id }) => id === at);
  return station?.isOpen && at !== 'about' ? at : null;
}
