/** The learner's record: what was done, when, and with which rod input. See docs/record-format.md. */
export {
  emptyRecord,
  RECORD_VERSION,
  type LearnerRecord,
  type LessonProgress,
  type Notes,
  type Prediction,
  type SetAside,
  type Settings,
  type StoredTry
} from './record';
export { applyChange, type RecordChange } from './change';
export { mergeRecords } from './merge';
export {
  readDocument,
  RecordError,
  RECORD_FORMAT,
  toDocument,
  type RecordDocument
} from './document';
export { stationToGoOn, wayThrough, type BestMarks, type Part, type Station } from './way';
