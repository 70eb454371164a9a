/** Lessons, challenges and questions: data, with the schema that checks it. */
export type {
  FeelSection,
  FieldSection,
  Lesson,
  LessonFolder,
  PredictSection,
  PredictQuestion,
  SeeSection,
  ShownRun,
  ToldLesson
} from './lesson';
export { parseLesson } from './parse-lesson';
export { findChallenge } from './find-challenge';
export { findLesson } from './find-lesson';
export { allLessons, loadLessons } from './load';
export {
  answerOf,
  askedFigures,
  isCertainPrediction,
  judgeSaid,
  type AskedFigure,
  type SaidVerdict
} from './prediction';
export { nearestOption, saidOf } from './nearest-option';
export { withoutRight } from './reply';
export { checkLesson, type LessonReport } from './check';
export { checkDrill, type DrillReport } from './check-drill';
export { challengesOf, drills, idsOf, type Drill } from './drills';
export { figureWords, seenFigureWords, toldFigures } from './figure-words';
export { glossary } from './glossary';
export { lessonNumber, nameInOrder } from './lesson-number';
export { isBlank, nthTry, taskIdOf, tryNamed } from './nth-try';
export { PHASES, TRIES } from './phases';
export { RETRIEVES, type Retrieve } from './retrieves';
export { isDragged, retrievesFor } from './retrieves/fitting';
