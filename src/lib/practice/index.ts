/** The learner's record: what was done, when, and with which rod input. See docs/record-format.md. */
export { applyChange, type RecordChange } from './change';
export { mergeRecords } from './merge';
export {
  sectionStation,
  stationToGoOn,
  nextStation,
  lessonStations,
  type StationPart,
  type Station
} from './lesson-progress';
export {
  keptBest,
  leftAt,
  lessonMarks,
  marksText,
  tryStanding,
  type LessonMarks,
  type TryStanding
} from './lesson-marks';
export {
  QUESTION_MINUTES,
  ENDED_BY_GOOD,
  PHASES,
  RULER_LEAST,
  SHORT_DRILL_TRIES,
  TRY_MINUTES,
  TRIES,
  type Phase
} from './design';
export { figureLevel, figureOfReply } from './figure-level';
export { lawnHandOf, type LawnHand } from './lawn';
export { countedShare, doOverlap, type CountedShare } from './counted-share';
export { errorScores } from './error-scores';
export { markOf, travelOf, tryMarkOf, type Mark } from './mark';
export { aimFor, handSpread, meantDistances, rulerAt, rulerOf, trendOf, type Ruler } from './ruler';
export { biasText, rulerWords, trendText } from './ruler-words';
export { isTold, planOf, type TryPlan } from './feedback-plan';
export { callOf, guessOf, isAtStake, keptGuess } from './guess';
export { handDrill, type HandDrill } from './hand-drill';
export { challengeOfTry, inGear } from './in-gear';
export { measuredOf } from './measured';
export { judgeCheck, type CheckResult } from './mastery';
export { drillProgressOf, type DonePart, type Progress, type ScheduledTry } from './schedule';
export {
  answeredToday,
  isTaught,
  questionsToday,
  type AnsweredToday,
  type Question
} from './questions';
export { nextLesson } from './next-lesson';
export { today, drillTriesOf, type Today } from './today';
export { isToldApart, logGroups, type LogGroup, type LogSort } from './season-log';
export { recordCsv } from './record-csv';
export { triesCsv } from './tries-csv';
export { isInAnyGear, ownGearId, parseAssignment, parsePacket } from './assignment';
export { answeredOf, type AnswerTally } from './answered';
export * from './review';
