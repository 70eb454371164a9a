/**
 * npm run check:content [-- --json]
 * Loads every lesson, runs what it asks and shows, grades each challenge's reference and beginner
 * move, and prints the marks. Exit 1 and a line for each fault on stderr.
 */
import { checkLesson, loadLessons, type LessonReport } from '../src/lib/course';
import { DataError, formatLength, formatTime, inUnits } from '../src/lib/scoring';

function main(args: readonly string[]): number {
  const unknown = args.find((arg) => arg !== '--json');
  if (unknown !== undefined) return fail([`unknown option ${unknown}; there is only --json`]);
  try {
    const lessons = loadLessons().map(checkLesson);
    const faults = lessons.flatMap(({ id, faults }) => faults.map((fault) => `${id}: ${fault}`));
    const text = args.includes('--json')
      ? JSON.stringify({ lessons, faults })
      : lessons.map(written).join('\n\n');
    process.stdout.write(`${text}\n`);
    return faults.length > 0 ? fail(faults) : 0;
  } catch (error) {
    if (error instanceof DataError || error instanceof RangeError) return fail([error.message]);
    throw error;
  }
}

function written({ id, title, minutes, questions, challenges }: LessonReport): string {
  const rows = challenges.map(({ id, advice, ...marks }) => {
    const move = advice
      ? `tip ${formatLength(advice.tipTravel_m, 'imperial')} ± ${formatLength(advice.band_m, 'imperial')} in ${formatTime(advice.duration_s)}`
      : 'no single move';
    return [id, marks.referenceMarks, marks.beginnerMarks, marks.roughHandMarks, move];
  });
  return [
    `${title} (${id}), ${minutes} min`,
    ...questions.map(({ ask, key }) => `  asks: ${inUnits(ask, 'imperial')} → ${key}`),
    ...table([['challenge', 'reference', 'beginner', 'rough hand', 'advice'], ...rows])
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
