import type { Drill, Lesson } from '../course';
import { TRY_MINUTES, type Phase } from './design';
import type { LearnerRecord, StoredTry } from './record';
import { progressOf, type Progress, type ScheduledTry } from './schedule';

/** What to do today, in one line. */
export interface Today {
  line: string;
  why: string;
  minutes: number;
  /** Address on this site. */
  address: string;
}

/** What there is to learn: lessons in order, and skills that are taken through all phases. */
export interface Course {
  lessons: readonly Lesson[];
  drills: readonly Pick<Drill, 'id' | 'title' | 'lesson' | 'asks'>[];
}

/** A drill with where its learner stands. */
export interface Practised {
  drill: Course['drills'][number];
  progress: Progress;
}

/** How the schedule reads a stored try; null for one that is no practice or cannot be graded. */
export type ReadTry = (made: StoredTry) => ScheduledTry | null;

type Reason = { line: (title: string) => string; why: string };

const PRACTISE: Record<Phase, Reason> = {
  seen: {
    line: (title) => `${title}: with the bait in sight.`,
    why: 'First the hand learns what the eye sees.'
  },
  half_seen: {
    line: (title) => `${title}: in sight and out of sight in turn.`,
    why: 'The hand begins to go by itself; guess before you look.'
  },
  unseen: {
    line: (title) => `${title}: out of sight.`,
    why: 'On the water nobody shows you the bait.'
  },
  kept: {
    line: (title) => `${title}: see whether it is still there.`,
    why: 'A day or more later, without help, is what counts.'
  }
};

const LAPSED: Reason = {
  line: (title) => `${title}: practise it again, out of sight.`,
  why: 'It had gone at the last check. That happens; it comes back quicker than it came.'
};

/**
 * The one thing to do: a check that is due, then practice that was begun, then the drill of a lesson
 * that is finished, then the lesson in hand, then the next lesson. Null when everything is done or
 * nothing is due.
 */
export function today(
  record: LearnerRecord,
  course: Course,
  now_ms: number,
  read: ReadTry
): Today | null {
  const practised = practisedIn(record, course, now_ms, read);
  const due = practised.find(({ progress }) => isDue(progress, now_ms));
  const begun = practised.find(({ progress }) => progress.due_ms === null && progress.left > 0);
  const chosen = due ?? begun ?? taught(record, course, practised);
  return chosen ? practiceOf(chosen) : lessonOf(record, course.lessons);
}

/** The drills that were begun. */
export function practisedIn(
  { tries }: LearnerRecord,
  { drills }: Course,
  now_ms: number,
  read: ReadTry
): Practised[] {
  return drills.flatMap((drill) => {
    const made = triesOf(drill.id, tries).flatMap((one) => read(one) ?? []);
    return made.length > 0 ? [{ drill, progress: progressOf(made, now_ms, drill.asks) }] : [];
  });
}

/** Tries that were made as practice of this drill; its name is the first part of their challenges' ids. */
export function triesOf(drill: string, tries: readonly StoredTry[]): StoredTry[] {
  return tries.filter(
    ({ challenge, phase }) => phase !== undefined && challenge.startsWith(`${drill}-`)
  );
}

/** A drill that was taught and has not been begun. */
function taught(
  { progress }: LearnerRecord,
  { drills }: Course,
  begun: readonly Practised[]
): Practised | undefined {
  const drill = drills.find(
    ({ id, lesson }) =>
      progress.some((one) => one.lesson === lesson && one.finished !== null) &&
      !begun.some((one) => one.drill.id === id)
  );
  return drill && { drill, progress: progressOf([], 0, drill.asks) };
}

function isDue({ due_ms }: Progress, now_ms: number): boolean {
  return due_ms !== null && due_ms <= now_ms;
}

function practiceOf({ drill, progress }: Practised): Today {
  const reason = progress.standing === 'lapsed' ? LAPSED : PRACTISE[progress.phase];
  return {
    line: reason.line(drill.title),
    why: reason.why,
    minutes: Math.max(1, Math.round(progress.left * TRY_MINUTES)),
    address: `/ruler/practise?drill=${drill.id}`
  };
}

function lessonOf(record: LearnerRecord, lessons: readonly Lesson[]): Today | null {
  const finished = new Set(
    record.progress.filter((one) => one.finished !== null).map(({ lesson }) => lesson)
  );
  const inHand = [...record.progress]
    .filter(({ lesson }) => !finished.has(lesson))
    .sort((a, b) => (a.at < b.at ? 1 : -1))
    .flatMap(({ lesson }) => lessons.find(({ id }) => id === lesson) ?? [])[0];
  const lesson = inHand ?? lessons.find(({ id }) => !finished.has(id));
  if (!lesson) return null;
  return {
    line: inHand ? `Go on with “${lesson.title}”.` : `Begin “${lesson.title}”.`,
    why: inHand ? 'You are in the middle of it.' : 'It comes next.',
    minutes: lesson.minutes,
    address: `/lessons/${lesson.id}`
  };
}
