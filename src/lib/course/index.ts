/** Lessons, challenges and questions: data, with the schema that checks it. */
export type {
  Demo,
  FeelSection,
  FieldSection,
  Lesson,
  LessonFolder,
  Option,
  PredictSection,
  Question,
  Section,
  SectionKind,
  SeeSection,
  ShownRun,
  TrySection
} from './lesson';
export { parseLesson } from './parse-lesson';
export { findChallenge, findLesson, loadLessons } from './load';
export { answerOf, isCertain, type Answer } from './prediction';
export { checkLesson, type ChallengeReport, type LessonReport } from './check';
export { seededRandom, type Random } from './seeded-random';
