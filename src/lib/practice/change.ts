import { isSameQuestion, later, mergeRecords, movedToEnd } from './merge';
import {
  type StoredAnswer,
  type ClubSession,
  type DayPlan,
  emptyRecord,
  type LearnerRecord,
  type LessonProgress,
  type LogEntry,
  type Outfit,
  type Prediction,
  type Settings,
  type SpellDraft,
  type StoredTry,
  type TestSession
} from '../wire';

/** Everything that can happen to a record. Doing the same change twice does no more than once. */
export type RecordChange =
  | { kind: 'set'; settings: Partial<Settings> }
  | { kind: 'predicted'; prediction: Prediction }
  | { kind: 'tried'; try: StoredTry }
  | { kind: 'answered'; answer: StoredAnswer }
  | { kind: 'reached'; lesson: string; station: string; at: string }
  | { kind: 'finished'; lesson: string; station: string; at: string }
  | { kind: 'skipped'; lesson: string; station: string; at: string }
  | { kind: 'outfit kept'; outfit: Outfit }
  | { kind: 'outfit dropped'; id: string }
  | { kind: 'session kept'; session: TestSession }
  | { kind: 'session dropped'; id: string }
  | { kind: 'plan kept'; plan: DayPlan }
  | { kind: 'plan dropped'; id: string }
  | { kind: 'logged'; entry: LogEntry }
  | { kind: 'log dropped'; id: string }
  | { kind: 'drafted'; draft: SpellDraft | null }
  | { kind: 'club kept'; one: ClubSession }
  | { kind: 'club dropped'; id: string }
  | { kind: 'imported'; record: LearnerRecord }
  | { kind: 'erased' };

/** The record after the change; the one given is left as it was. */
export function applyChange(record: LearnerRecord, change: RecordChange): LearnerRecord {
  switch (change.kind) {
    case 'set':
      return { ...record, settings: { ...record.settings, ...change.settings } };
    case 'predicted':
      return { ...record, predictions: predict(record.predictions, change.prediction) };
    case 'tried':
      return { ...record, tries: withOne(record.tries, change.try) };
    case 'answered':
      return { ...record, answers: withOne(record.answers, change.answer) };
    case 'reached':
    case 'finished':
    case 'skipped':
      return { ...record, progress: reach(record.progress, change) };
    case 'outfit kept':
      return { ...record, outfits: withLatest(record.outfits, change.outfit) };
    case 'outfit dropped':
      return withoutOutfit(record, change.id);
    case 'session kept':
      return { ...record, sessions: withLatest(record.sessions, change.session) };
    case 'session dropped':
      return { ...record, sessions: record.sessions.filter(({ id }) => id !== change.id) };
    case 'plan kept':
      return { ...record, plans: withLatest(record.plans, change.plan) };
    case 'plan dropped':
      return { ...record, plans: record.plans.filter(({ id }) => id !== change.id) };
    case 'logged':
      return { ...record, entries: withLatest(record.entries, change.entry) };
    case 'log dropped':
      return { ...record, entries: record.entries.filter(({ id }) => id !== change.id) };
    case 'drafted':
      return { ...record, draft: change.draft };
    case 'club kept':
      return { ...record, club: withMember(record.club, change.one) };
    case 'club dropped':
      return { ...record, club: record.club.filter(({ session }) => session.id !== change.id) };
    case 'imported':
      return mergeRecords(record, change.record);
    case 'erased':
      return emptyRecord();
  }
}

/** A prediction is a commitment: the first answer to a question stands. */
function predict(predictions: readonly Prediction[], made: Prediction): readonly Prediction[] {
  return predictions.some((one) => isSameQuestion(one, made))
    ? predictions
    : [...predictions, made];
}

/** Added at the end, unless it is there already. */
function withOne<T extends { id: string }>(list: readonly T[], made: T): readonly T[] {
  return list.some(({ id }) => id === made.id) ? list : [...list, made];
}

/** In its place, or at the end; an older state of it changes nothing. */
function withLatest<T extends { id: string; at: string }>(
  list: readonly T[],
  made: T
): readonly T[] {
  const before = list.find(({ id }) => id === made.id);
  if (!before) return [...list, made];
  return list.map((one) => (one === before ? later(before, made) : one));
}

/** In its place, or at the end: what a club is given last stands. */
function withMember(club: readonly ClubSession[], made: ClubSession): readonly ClubSession[] {
  const isIt = ({ session }: ClubSession) => session.id === made.session.id;
  return club.some(isIt) ? club.map((one) => (isIt(one) ? made : one)) : [...club, made];
}

/** Tries and sessions made with it stay as they are. */
function withoutOutfit(record: LearnerRecord, id: string): LearnerRecord {
  const { outfit, ...settings } = record.settings;
  return {
    ...record,
    settings: outfit === id ? settings : record.settings,
    outfits: record.outfits.filter((one) => one.id !== id)
  };
}

type OnTheWay = Extract<RecordChange, { kind: 'reached' | 'finished' | 'skipped' }>;

function reach(
  progress: readonly LessonProgress[],
  { kind, lesson, station, at }: OnTheWay
): readonly LessonProgress[] {
  const before = progress.find((one) => one.lesson === lesson);
  const reached = movedToEnd(before?.reached ?? [], station);
  const finished = before?.finished ?? (kind === 'finished' ? at : null);
  const skips = before?.skipped ?? [];
  const skipped = kind === 'skipped' ? movedToEnd(skips, station) : skips;
  const now = { lesson, reached, at, finished, ...(skipped.length > 0 && { skipped }) };
  return [...progress.filter((one) => one.lesson !== lesson), now];
}
