import type { Drill, Lesson } from '../course';
import { PHASES, QUESTION_MINUTES, SHORT_DRILL_TRIES, TRY_MINUTES, type Phase } from './design';
import { goOnAt, lessonMarks } from './lesson-marks';
import { latest, lessonInHand, nextLesson } from './next-lesson';
import { isTaught, questionsToday, type Question } from './questions';
import type { Days } from './review';
import { drillProgressOf, type Progress, type ScheduledTry } from './schedule';
import type { LearnerRecord, StoredTry } from '../wire';

/** What to do today, in one line, why its first part where the line doesn't say, and about how long it all takes. */
export interface Today {
  line: string;
  why: string;
  minutes: number;
  /** Where each part of it is done, in the order of the line. */
  doors: readonly DayDoor[];
}

/** What leads to a part of the day is called, and an address on this site. */
interface DayDoor {
  name: string;
  address: string;
}

/** What there is to learn: lessons in order, and skills that are taken through all phases. */
export interface Course {
  lessons: readonly Lesson[];
  drills: readonly Pick<Drill, 'id' | 'title' | 'lesson' | 'asks'>[];
  questions: readonly Question[];
}

/** A drill with where its learner stands. */
export interface Practised {
  drill: Course['drills'][number];
  progress: Progress;
}

/** How the schedule reads a stored try; null for one that is no practice or cannot be graded. */
export type ReadTry = (made: StoredTry) => ScheduledTry | null;

/** The time, and the learner's calendar around it. */
export interface Now {
  /** Since 1970 in UTC, ms. */
  at_ms: number;
  days: Days;
}

/** A part of a day: its `does` goes into the middle of a sentence. */
interface Part {
  does: string;
  why: string;
  minutes: number;
  door: DayDoor;
}

/** What is under way, and when it was last worked at. */
interface InHand {
  part: Part;
  at: string;
}

type Reason = { does: (title: string) => string; why: string };

const PRACTISE: Record<Phase, Reason> = {
  seen: {
    does: (title) => `practice “${title}” with the jig in sight`,
    why: 'First your hand learns what your eye sees.'
  },
  half_seen: {
    does: (title) => `practice “${title}”, every other try hidden`,
    why: 'Now your hand takes over. Call it before you look.'
  },
  unseen: {
    does: (title) => `practice “${title}” with the jig hidden`,
    why: 'On the water nobody shows you the jig.'
  },
  kept: {
    does: (title) => `check that you still have “${title}”`,
    why: 'What you can do a day later, with no help, is what counts.'
  }
};

const LAPSED: Reason = {
  does: (title) => `practice “${title}” again with the jig hidden`,
  why: 'You’d lost it at the last check. It comes back faster than the first time.'
};

/**
 * What to do today. What was worked at today comes first, whatever else is due: nobody is led away from
 * the step they stand at. Then a check that is due, what was begun on another day, the questions that
 * are due and, with nothing under way or to be checked, what comes next: a few hidden tries of what a
 * finished lesson taught, or the next lesson. Days that were missed add nothing. Null when all is done.
 */
export function today(
  record: LearnerRecord,
  course: Course,
  now: Now,
  read: ReadTry
): Today | null {
  const practised = practisedIn(record, course, now.at_ms, read);
  const due = practised.find(({ progress }) => isDue(progress, now.at_ms));
  const hand = inHand(record, course, practised);
  const isOfToday = hand !== null && now.days.of(hand.at) === now.days.today;
  const parts = [
    isOfToday ? hand.part : null,
    due ? practiceOf(due) : null,
    hand && !isOfToday && !due ? hand.part : null,
    questionsOf(record, course, now.days),
    hand || due ? null : (shortDrillOf(record, course) ?? lessonOf(record, course.lessons))
  ].filter((one) => one !== null);
  return parts.length === 0 ? null : joined(parts);
}

function joined(parts: readonly Part[]): Today {
  const line = parts.map(({ does }) => does).join(', then ');
  return {
    line: `${upper(line)}.`,
    why: parts[0].why,
    minutes: parts.reduce((sum, { minutes }) => sum + minutes, 0),
    doors: parts.map(({ door }) => door)
  };
}

/** Questions wait until a lesson was learnt, unless some were answered and are due again. */
function questionsOf(
  record: LearnerRecord,
  { questions, lessons }: Pick<Course, 'questions' | 'lessons'>,
  days: Days
): Part | null {
  const { items, due, missed } = questionsToday(record, questions, days, lessons);
  if (items.length === 0 || (due === 0 && !isTaught(record, lessons))) return null;
  const these = items.length === 1 ? 'one question' : `${items.length} questions`;
  return {
    does: `answer ${these}`,
    why: due > 0 ? whyDue(due, missed) : 'Questions show what stuck.',
    minutes: Math.max(1, Math.round(items.length * QUESTION_MINUTES)),
    door: { name: `Answer ${these}`, address: '/quiz' }
  };
}

function whyDue(due: number, missed: number): string {
  const fading = due - missed;
  if (missed === 0) {
    return fading === 1
      ? 'You’re about to forget one, so now’s the time.'
      : `You’re about to forget ${fading} of them, so now’s the time.`;
  }
  if (fading === 0) {
    return missed === 1
      ? 'You missed one last time, so it’s back.'
      : `You missed ${missed} of them last time, so they’re back.`;
  }
  return `You missed ${missed} of them last time, and you’re about to forget ${fading}.`;
}

/** Practice that was begun or the lesson in hand, whichever was worked at last. */
function inHand(
  record: LearnerRecord,
  { lessons }: Course,
  practised: readonly Practised[]
): InHand | null {
  const begun = practised.find(
    ({ progress }) => isUnderWay(progress) && progress.due_ms === null && progress.left > 0
  );
  const lesson = lessonInHand(record, lessons);
  const drill = begun && { part: practiceOf(begun), at: lastTryAt(begun, record) };
  if (lesson && !(drill && drill.at >= lesson.at))
    return { part: goOnWith(lesson.lesson, record), at: lesson.at };
  return drill ?? null;
}

function lastTryAt({ drill }: Practised, { tries }: LearnerRecord): string {
  return latest(drillTriesOf(drill.id, tries).map(({ at }) => at));
}

/** Hidden tries before their turn leave a drill at its beginning. */
function isUnderWay({ phase, made }: Progress): boolean {
  return phase !== 'seen' || made > 0;
}

/** The drills that were begun. */
function practisedIn(
  { tries }: LearnerRecord,
  { drills }: Course,
  now_ms: number,
  read: ReadTry
): Practised[] {
  return drills.flatMap((drill) => {
    const made = drillTriesOf(drill.id, tries).flatMap((one) => read(one) ?? []);
    return made.length > 0 ? [{ drill, progress: drillProgressOf(made, now_ms, drill.asks) }] : [];
  });
}

/** Tries that were made as practice of this drill; its name is the first part of their challenges' ids. */
export function drillTriesOf(drill: string, tries: readonly StoredTry[]): StoredTry[] {
  return tries.filter(
    ({ challenge, phase }) => phase !== undefined && challenge.startsWith(`${drill}-`)
  );
}

/** A few hidden tries of what the last lesson taught, where they were not made yet. */
function shortDrillOf(record: LearnerRecord, { drills, lessons }: Course): Part | null {
  const { tries } = record;
  const isTold = ({ lesson: id }: Course['drills'][number]) =>
    lessons.some((lesson) => lesson.id === id && lessonMarks(lesson, record).isThrough);
  const short = drills.find(
    (drill) => isTold(drill) && drillTriesOf(drill.id, tries).length < SHORT_DRILL_TRIES
  );
  if (!short) return null;
  const left = SHORT_DRILL_TRIES - drillTriesOf(short.id, tries).length;
  const these = `make ${left} hidden ${left === 1 ? 'try' : 'tries'}`;
  return {
    does: `${these} at “${short.title}”`,
    why: 'In the boat you won’t see the jig either.',
    minutes: Math.max(1, Math.round(left * TRY_MINUTES)),
    door: { name: upper(these), address: `/ruler/practise?drill=${short.id}&short` }
  };
}

function isDue({ due_ms }: Progress, now_ms: number): boolean {
  return due_ms !== null && due_ms <= now_ms;
}

function practiceOf({ drill, progress }: Practised): Part {
  const reason = progress.standing === 'lapsed' ? LAPSED : PRACTISE[progress.phase];
  return {
    does: reason.does(drill.title),
    why: reason.why,
    minutes: Math.max(1, Math.round(progress.left * TRY_MINUTES)),
    door: { name: doorInto(progress), address: `/ruler/practise?drill=${drill.id}` }
  };
}

/** Named after the part that it leads to. */
const doorInto = ({ phase }: Progress) =>
  phase === 'kept' ? 'Check it' : `Go on: part ${PHASES.indexOf(phase) + 1} of ${PHASES.length}`;

function lessonOf(record: LearnerRecord, lessons: readonly Lesson[]): Part | null {
  const next = nextLesson(record, lessons);
  if (!next) return null;
  return {
    does: `start “${next.title}”`,
    // That it's next is in what it does.
    why: '',
    minutes: next.minutes,
    door: { name: 'Start the lesson', address: `/lessons/${next.id}` }
  };
}

function goOnWith(lesson: Lesson, record: LearnerRecord): Part {
  const { id, title, minutes } = lesson;
  const step = goOnAt(lesson, record);
  const door = { name: `Go on: ${step.name}`, address: `/lessons/${id}#${step.id}` };
  return { does: `finish “${title}”`, why: '', minutes, door };
}

const upper = (line: string) => `${line[0].toUpperCase()}${line.slice(1)}`;
