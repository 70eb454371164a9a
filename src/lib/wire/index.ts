/** Everything that crosses a boundary: one schema each, and types that are derived from it. */
export { report, type Report, type StoredAnswer } from './answer';
export {
  askedParts,
  assignment,
  HOMEWORK_PHASES,
  LAWN_DRAGS,
  LAWN_MOST_M,
  MOST,
  storedAssignment,
  type AskedPart,
  type Assignment,
  type HomeworkPhase
} from './assignment';
export {
  boatCard,
  CARD_ROWS,
  type BoatCard,
  type CardFigures,
  type CardMove,
  type CardRow,
  type CardSize
} from './boat-card';
export * from './clinic';
export * from './clinic-views';
export {
  FISH_MOODS,
  WINDS,
  type Conditions,
  type FishMood,
  type Light,
  type Wind
} from './conditions';
export { csvTable, type Cell } from './csv';
export {
  dayPlan,
  type DayPlan,
  type PlanAsked,
  type PlannedMove,
  type PlannedWeight
} from './day-plan';
export { idFrom, TOKEN_BYTES, TOKEN_PATTERN, within } from './fields';
export * from './guide';
export type * from './guide-views';
export * from './homework';
export { jigTable, type JigTable, type MeasuredJig, type TableJig } from './jig-table';
export { lessonPictures, type LessonPictures, type Thumb } from './lesson-pictures';
export {
  outfit,
  outfitGear,
  withOutfitGear,
  type Outfit,
  type OutfitGear,
  type OwnNumbers,
  type TimedDrop
} from './outfit';
export {
  logEntry,
  type CameraLook,
  type FeltSign,
  type LogEntry,
  type LogPace,
  type SpellDraft
} from './log-entry';
export { logCsv, logText, readLog, withoutPlaces } from './log-file';
export {
  packetOf,
  readPacket,
  type HomeworkResult,
  type Packet,
  type PacketAnswer,
  type PacketTry
} from './packet';
export { emptyRecord } from './empty-record';
export {
  RECORD_VERSION,
  type LearnerRecord,
  type LessonProgress,
  type Prediction,
  type Settings,
  type WaterNow
} from './record';
export {
  readDocument,
  RECORD_FORMAT,
  RecordError,
  toDocument,
  type RecordDocument
} from './record-document';
export { asSent, decodeRod, encodeRod, type CodedRod } from './rod-code';
export {
  dropEntries,
  inOneList,
  known,
  measuredTestEntries,
  MOST_TESTS,
  testSession,
  type ClubSession,
  type Filmed,
  type StoredTest,
  type TestSession
} from './test-session';
export {
  readTestCells,
  readTestsCsv,
  testsCsv,
  type TestCells,
  type TestColumn
} from './tests-csv';
export { type KeptGuess, type StoredTry } from './try';
export { sentRun } from './sent-run';
export { areSameMarks, given, keptMarks, type KeptMarks, type MarkedBy } from './kept-marks';
export { waterNow } from './first-water';
