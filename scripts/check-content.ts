/**
 * npm run check:content [-- --json] [lesson …]
 * Loads every lesson, or those named by their ids, runs what it asks and shows, grades each challenge's reference and beginner
 * move, and prints the marks. Exit 1 and a line for each fault on stderr.
 */
import {
  checkLesson,
  findLesson,
  loadLessons,
  type Lesson,
  type LessonReport
} from '../src/lib/course';
import { DataError, formatLength, formatTime, inUnits } from '../src/lib/scoring';

function main(args: readonly string[]): number {
  const ids = args.filter((arg) => arg !== '--json');
  const unknown = ids.find((arg) => arg.startsWith('-'));
  if (unknown !== undefined) return fail([`unknown option ${unknown}; there is only --json`]);
  try {
    const reports = lessonsNamed(ids).map(checkLesson);
    const faults = reports.flatMap(({ id, faults }) => faults.map((fault) => `${id}: ${fault}`));
    const text = args.includes('--json')
      ? JSON.stringify({ lessons: reports, challenges: challengesOf(reports), faults })
      : reports.map(written).join('\n\n');
    process.stdout.write(`${text}\n`);
    return faults.length > 0 ? fail(faults) : 0;
  } catch (error) {
    if (error instanceof DataError || error instanceof RangeError) return fail([error.message]);
    throw error;
  }
}

/** No id at all names every lesson. */
function lessonsNamed(ids: readonly string[]): Lesson[] {
  const lessons = loadLessons();
  const unknown = ids.find((id) => !findLesson(id, lessons));
  if (unknown !== undefined) throw new RangeError(`there is no lesson ${unknown}`);
  return lessons.filter(({ id }) => ids.length === 0 || ids.includes(id));
}

/** All challenges in one list, each with its lesson. */
function challengesOf(reports: readonly LessonReport[]) {
  return reports.flatMap(({ id, challenges }) =>
    challenges.map((challenge) => ({ lesson: id, ...challenge }))
  );
}

function written({ id, title, minutes, questions, challenges }: LessonReport): string {
  const rows = challenges.map(({ id, advice, ...marks }) => {
    const move = advice
      ? `tip ${formatLength(advice.tipTravel_m, 'imperial')} ± ${formatLength(advice.band_m, 'imperial')} in ${formatTime(advice.duration_s)}`
      : 'no single move';
    return [id, marks.phase, marks.referenceMarks, marks.beginnerMarks, marks.roughHandMarks, move];
  });
  return [
    `${title} (${id}), ${minutes} min`,
    ...questions.map(({ ask, key }) => `  asks: ${inUnits(ask, 'imperial')} → ${key}`),
    ...table([['challenge', 'phase', 'reference', 'beginner', 'rough hand', 'advice'], ...rows])
  ].join('\n');
}

function table(rows: readonly (string | number)[][]): string[] {
  const widths = rows[0].map((_, i) => Math.max(...rows.map((row) => String(row[i]).length)));
  return rows.map((row) =>
    `  ${row.map((cell, i) => String(cell).padEnd(widths[i])).join('  ')}`.trimEnd()
  );
}

function fail(faults: readonly string[]): number {
  for (const fault of faults) process.stderr.write(`${fault.replace(/\s+/g, ' ')}\n`);
  return 1;
}

process.exitCode = main(process.argv.slice(2));
