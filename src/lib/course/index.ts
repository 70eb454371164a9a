/** Lessons, challenges and questions: data, with the schema that checks it. */
export type {
  Demo,
  FeelSection,
  FieldSection,
  Lesson,
  LessonFolder,
  Option,
  PredictSection,
  PredictQuestion,
  Section,
  SeeSection,
  ShownRun,
  TrySection
} from './lesson';
export { parseLesson } from './parse-lesson';
export { findChallenge } from './find-challenge';
export { findLesson } from './find-lesson';
export { allLessons, loadLessons } from './load';
export {
  answerOf,
  askedFigures,
  type AskedFigure,
  isCertainPrediction,
  judgeSaid,
  nearestOption,
  saidOf,
  type SaidVerdict,
  type PredictAnswer
} from './prediction';
export { checkLesson, type ContentReport, type LessonReport } from './check';
export { checkDrill, type DrillReport } from './check-drill';
export { challengesOf, drills, idsOf, type Drill, type Sitting } from './drills';
export { figureWords } from './figure-words';
export { glossary, type Term } from './glossary';
export { lessonNumber } from './lesson-number';
export { nthTry, taskIdOf, tryNamed } from './nth-try';
export { PHASES, TRIES } from './phases';
export { RETRIEVES, type Retrieve } from './retrieves';
export { retrievesFor } from './retrieves/fitting';
