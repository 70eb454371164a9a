import { findLesson, judgeSaid, loadLessons, type SaidVerdict } from '../../course';
import { DataError } from '../../scoring';

const lessons = loadLessons();

/** A number, SI, said of what this section of a lesson asks. Throws DataError for one that asks none. */
export function judged({ lesson, said }: { lesson: string; said: number }): SaidVerdict {
  const section = findLesson(lesson, lessons)?.sections.find(({ kind }) => kind === 'predict');
  if (section?.kind !== 'predict') throw new DataError('lesson', lesson, 'asks for no number');
  return judgeSaid(section.question, said);
}
