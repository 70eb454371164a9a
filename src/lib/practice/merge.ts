import type { ClubSession, LearnerRecord, LessonProgress, Prediction } from '../wire';

type Asked = Pick<Prediction, 'lesson' | 'station'>;

/**
 * Two records of one learner as one, say of a phone and of a computer. Nothing of either is lost:
 * tries are joined by id, of two predictions the earlier stands, of two places in a lesson the later, and
 * so of an outfit, a session, a plan or an entry of the log that was changed on both.
 * Settings stay those of `mine`, since they suit the device in hand, and so does a spell half filled in.
 */
export function mergeRecords(mine: LearnerRecord, other: LearnerRecord): LearnerRecord {
  return {
    settings: mine.settings,
    predictions: joined(mine.predictions, other.predictions, question, earlier),
    progress: joined(mine.progress, other.progress, byLesson, further),
    setAside: joined(mine.setAside, other.setAside, (one) => JSON.stringify(one), first),
    answers: joined(mine.answers, other.answers, ({ id }) => id, first).sort(byTime),
    outfits: joined(mine.outfits, other.outfits, ({ id }) => id, later),
    plans: joined(mine.plans, other.plans, ({ id }) => id, later),
    entries: joined(mine.entries, other.entries, ({ id }) => id, later),
    draft: mine.draft ?? other.draft,
    tries: joined(mine.tries, other.tries, ({ id }) => id, first).sort(byTime),
    sessions: joined(mine.sessions, other.sessions, ({ id }) => id, later),
    club: joined(mine.club, other.club, ({ session }) => session.id, laterTested)
  };
}

function joined<T>(
  mine: readonly T[],
  others: readonly T[],
  keyOf: (one: T) => string,
  choose: (a: T, b: T) => T
): T[] {
  const all = new Map(mine.map((one) => [keyOf(one), one]));
  for (const one of others) {
    const known = all.get(keyOf(one));
    all.set(keyOf(one), known ? choose(known, one) : one);
  }
  return [...all.values()];
}

const question = ({ lesson, station }: Asked) => `${lesson}/${station}`;

export function isSameQuestion(a: Asked, b: Asked): boolean {
  return question(a) === question(b);
}

const byLesson = ({ lesson }: { lesson: string }) => lesson;

const first = <T>(one: T): T => one;

export function later<T extends { at: string }>(a: T, b: T): T {
  return b.at > a.at ? b : a;
}

function laterTested(a: ClubSession, b: ClubSession): ClubSession {
  return b.session.at > a.session.at ? b : a;
}

function earlier(a: Prediction, b: Prediction): Prediction {
  return b.at < a.at ? b : a;
}

function further(a: LessonProgress, b: LessonProgress): LessonProgress {
  const [before, after] = b.at > a.at ? [a, b] : [b, a];
  const ends = [a.finished, b.finished].filter((end) => end !== null).sort();
  const reached = after.reached.reduce(movedToEnd, before.reached);
  const skipped = (after.skipped ?? []).reduce(movedToEnd, before.skipped ?? []);
  return { ...after, reached, finished: ends[0] ?? null, ...(skipped.length > 0 && { skipped }) };
}

/** The list with this one in it once, as the last. */
export function movedToEnd(list: string[], one: string): string[] {
  return [...list.filter((other) => other !== one), one];
}

function byTime(a: { at: string; id: string }, b: { at: string; id: string }): number {
  if (a.at === b.at) return a.id < b.id ? -1 : 1;
  return a.at < b.at ? -1 : 1;
}
