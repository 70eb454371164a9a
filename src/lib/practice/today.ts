import type { Lesson } from '../course';
import type { Challenge } from '../scoring';
import { TRY_MINUTES, type Phase } from './design';
import type { LearnerRecord } from './record';
import { progressOf, type Progress, type ScheduledTry } from './schedule';

/** What to do today, in one line. */
export interface Today {
  line: string;
  why: string;
  minutes: number;
  /** Address on this site. */
  address: string;
}

/** A challenge with where its learner stands. */
export interface Practised {
  challenge: Challenge;
  progress: Progress;
}

/** How the schedule reads a stored try of a challenge; null where it cannot be graded. */
export type ReadTry = (
  made: LearnerRecord['tries'][number],
  challenge: Challenge
) => ScheduledTry | null;

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
 * The one thing to do: a check that is due, then practice that was begun, then the lesson in hand,
 * then the next lesson. Null when everything is done or nothing is due; then see `nextCheck`.
 */
export function today(
  record: LearnerRecord,
  lessons: readonly Lesson[],
  now_ms: number,
  read: ReadTry
): Today | null {
  const practised = practisedIn(record, lessons, now_ms, read);
  const due = practised.find(({ progress }) => isDue(progress, now_ms));
  const begun = practised.find(({ progress }) => progress.due_ms === null && progress.left > 0);
  const chosen = due ?? begun;
  return chosen ? practiceOf(chosen) : lessonOf(record, lessons);
}

/** When the next check may be made, ms, if one is waiting. */
export function nextCheck(practised: readonly Practised[]): number | null {
  const dues = practised.flatMap(({ progress }) => progress.due_ms ?? []);
  return dues.length > 0 ? Math.min(...dues) : null;
}

/** The challenges that have been practised in a phase, not merely tried in a lesson. */
export function practisedIn(
  record: LearnerRecord,
  lessons: readonly Lesson[],
  now_ms: number,
  read: ReadTry
): Practised[] {
  return lessons
    .flatMap(({ challenges }) => challenges)
    .flatMap((challenge) => {
      const tries = record.tries.filter(
        (made) => made.challenge === challenge.id && made.phase !== undefined
      );
      if (tries.length === 0) return [];
      const scheduled = tries.flatMap((made) => read(made, challenge) ?? []);
      return [{ challenge, progress: progressOf(scheduled, now_ms) }];
    });
}

function isDue({ due_ms }: Progress, now_ms: number): boolean {
  return due_ms !== null && due_ms <= now_ms;
}

function practiceOf({ challenge, progress }: Practised): Today {
  const reason = progress.standing === 'lapsed' ? LAPSED : PRACTISE[progress.phase];
  return {
    line: reason.line(challenge.title),
    why: reason.why,
    minutes: Math.max(1, Math.round(progress.left * TRY_MINUTES)),
    address: `/ruler/practise?challenge=${challenge.id}`
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
