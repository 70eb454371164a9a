import { isSameQuestion, mergeRecords, movedToEnd } from './merge';
import {
  type StoredAnswer,
  emptyRecord,
  type LearnerRecord,
  type LessonProgress,
  type Prediction,
  type Settings,
  type StoredTry
} from '../wire';

/** Everything that can happen to a record. Doing the same change twice does no more than once. */
export type RecordChange =
  | { kind: 'set'; settings: Partial<Settings> }
  | { kind: 'predicted'; prediction: Prediction }
  | { kind: 'tried'; try: StoredTry }
  | { kind: 'answered'; answer: StoredAnswer }
  | { kind: 'reached'; lesson: string; station: string; at: string }
  | { kind: 'finished'; lesson: string; station: string; at: string }
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
      return { ...record, progress: reach(record.progress, change, null) };
    case 'finished':
      return { ...record, progress: reach(record.progress, change, change.at) };
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

function reach(
  progress: readonly LessonProgress[],
  { lesson, station, at }: { lesson: string; station: string; at: string },
  finished: string | null
): readonly LessonProgress[] {
  const before = progress.find((one) => one.lesson === lesson);
  const reached = movedToEnd(before?.reached ?? [], station);
  const now = { lesson, reached, at, finished: before?.finished ?? finished };
  return [...progress.filter((one) => one.lesson !== lesson), now];
}
