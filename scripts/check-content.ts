/**
 * npm run check:content [-- --json] [lesson …]
 * Loads every lesson with its drills, or those lessons named by their ids, runs what they ask and show,
 * grades each challenge's reference and beginner move, and prints the marks. Exit 1 and a line for each fault on stderr.
 */
import {
  checkDrill,
  checkLesson,
  drills,
  findLesson,
  loadLessons,
  type DrillReport,
  type Lesson,
  type LessonReport
} from '../src/lib/course';
import { DataError, formatLength, formatTime, inUnits } from '../src/lib/scoring';

function main(args: readonly string[]): number {
  const ids = args.filter((arg) => arg !== '--json');
  const unknown = ids.find((arg) => arg.startsWith('-'));
  if (unknown !== undefined) return fail([`unknown option ${unknown}; there is only --json`]);
  try {
    const lessons = lessonsNamed(ids);
    const reports = lessons.map(checkLesson);
    const practised = drills.filter(({ lesson }) => lessons.some(({ id }) => id === lesson));
    const drillReports = practised.map(checkDrill);
    const faults = [...reports, ...drillReports].flatMap(({ id, faults }) =>
      faults.map((fault) => `${id}: ${fault}`)
    );
    const text = args.includes('--json')
      ? JSON.stringify({
          lessons: reports,
          drills: drillReports,
          challenges: challengesOf(reports, drillReports),
          faults
        })
      : [...reports.map(written), ...drillReports.map(writtenDrill)].join('\n\n');
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
function challengesOf(lessons: readonly LessonReport[], drilled: readonly DrillReport[]) {
  return [
    ...lessons.flatMap(({ id, challenges }) =>
      challenges.map((challenge) => ({ lesson: id, ...challenge }))
    ),
    ...drilled.flatMap(({ lesson, challenges }) =>
      challenges.map((challenge) => ({ lesson, ...challenge }))
    )
  ];
}

function writtenDrill({ id, title, challenges }: DrillReport): string {
  const rows = challenges.map((challenge) => [
    challenge.id,
    challenge.referenceMarks,
    challenge.beginnerMarks,
    challenge.roughHandMarks,
    Math.max(...Object.values(challenge.lazy)),
    Math.min(...challenge.advised)
  ]);
  return [
    `Drill: ${title} (${id})`,
    ...table([
      ['challenge', 'reference', 'beginner', 'rough hand', 'best lazy', 'least advised'],
      ...rows
    ])
  ].join('\n');
}

function written({ id, title, minutes, questions, challenges }: LessonReport): string {
  const rows = challenges.map(({ id, advice, ...marks }) => {
    const move = advice
      ? `tip ${formatLength(advice.tipTravel_m, 'imperial')} ± ${formatLength(advice.band_m, 'imperial')} in ${formatTime(advice.duration_s)}`
      : 'no single move';
    return [
      id,
      marks.phase,
      marks.referenceMarks,
      marks.beginnerMarks,
      marks.roughHandMarks,
      Math.max(...Object.values(marks.lazy)),
      Math.min(...marks.advised),
      move
    ];
  });
  return [
    `${title} (${id}), ${minutes} min`,
    ...questions.map(({ ask, key }) => `  asks: ${inUnits(ask, 'imperial')} → ${key}`),
    ...table([
      [
        'challenge',
        'phase',
        'reference',
        'beginner',
        'rough hand',
        'best lazy',
        'least advised',
        'advice'
      ],
      ...rows
    ])
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
