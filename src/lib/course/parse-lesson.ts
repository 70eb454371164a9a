import { parseSetup } from '../model';
import {
  checkMove,
  DataError,
  inField,
  parseChallenge,
  parseData,
  type Challenge
} from '../scoring';
import type { Lesson, LessonFolder, PredictQuestion, Section, ShownRun } from './lesson';
import { lessonSchema } from './lesson-schema';

/** Checks a lesson's folder. Throws DataError with the file, path and value of the first fault. */
export function parseLesson({ folder, lesson: data, challenges: drafts }: LessonFolder): Lesson {
  return inFile(`lessons/${folder}/lesson.ts`, () => {
    const lesson = parseData(lessonSchema, data) as Omit<Lesson, 'challenges'>;
    const named = `${String(lesson.order).padStart(2, '0')}-${lesson.id}`;
    if (named !== folder) {
      throw new DataError('id', lesson.id, `order and id make ${named}, the folder is ${folder}`);
    }
    lesson.sections.forEach(checkRuns);
    const challenges = drafts.map((draft, i) =>
      inFile(`lessons/${folder}/challenges.ts`, () => parseChallenge(draft), `${i}.`)
    );
    return { ...lesson, challenges: inOrderOfTries(lesson.sections, challenges) };
  });
}

function inFile<T>(file: string, parse: () => T, within = ''): T {
  try {
    return parse();
  } catch (error) {
    throw error instanceof DataError && error.file === '' ? error.inFile(file, within) : error;
  }
}

function checkRuns(section: Section, i: number): void {
  if (section.kind === 'predict') {
    checkRun(section.question.run, `sections.${i}.question.run`);
    checkIds(section.question.options, `sections.${i}.question.options`);
    checkKey(section.question, `sections.${i}.question`);
  }
  if (section.kind !== 'see') return;
  section.demos.forEach(({ run }, k) => checkRun(run, `sections.${i}.demos.${k}.run`));
  checkIds(section.demos, `sections.${i}.demos`);
}

/** The model's own checks: the setup's under `setup`, the move's under `move`. */
function checkRun(run: ShownRun, path: string): void {
  inField(`${path}.setup`, () => parseSetup(run.setup));
  checkMove(run, `${path}.move`);
}

/** Either each option names what holds of the run, or common practice tells the right one. */
function checkKey({ practice, options }: PredictQuestion, path: string): void {
  options.forEach(({ holds }, i) => {
    if ((practice === undefined) === Object.keys(holds).length > 0) return;
    const must = practice === undefined ? 'must name a quantity' : 'must be left out';
    throw new DataError(`${path}.options.${i}.holds`, holds, must);
  });
  if (practice === undefined || options.some(({ id }) => id === practice)) return;
  throw new DataError(`${path}.practice`, practice, 'must be an option');
}

function checkIds(things: readonly { id: string }[], path: string): void {
  things.forEach(({ id }, i) => {
    if (things.findIndex((other) => other.id === id) !== i) {
      throw new DataError(`${path}.${i}.id`, id, 'is there twice');
    }
  });
}

/** Each challenge belongs to exactly one place among the tries. */
function inOrderOfTries(sections: readonly Section[], challenges: Challenge[]): Challenge[] {
  const asked = sections.flatMap((section, i) =>
    section.kind === 'try'
      ? section.challenges.map((id, k) => ({ id, path: `sections.${i}.challenges.${k}` }))
      : []
  );
  const unasked = challenges.find(({ id }) => !asked.some((ask) => ask.id === id));
  if (unasked) throw new DataError('sections', unasked.id, 'no try names this challenge');
  return asked.map(({ id, path }, i) => {
    const challenge = challenges.find((one) => one.id === id);
    if (!challenge) throw new DataError(path, id, 'there is no such challenge');
    if (asked.findIndex((ask) => ask.id === id) !== i) {
      throw new DataError(path, id, 'is there twice');
    }
    return challenge;
  });
}
