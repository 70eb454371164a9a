import {
  gradeHomework,
  homeworkTriesOf,
  type HomeworkReport
} from '$lib/practice/homework-grading';
import { gradedNow, runAllTries } from '$lib/app/try';
import type { HomeworkResult } from '$lib/wire';

/** What came back, every try of it run and graded again. Throws DataError for what is none of its homework. */
export async function gradedResult(result: HomeworkResult): Promise<HomeworkReport> {
  await runAllTries(homeworkTriesOf(result));
  return gradeHomework(result, gradedNow);
}
