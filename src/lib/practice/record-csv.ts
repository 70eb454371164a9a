import type { Grade } from '../scoring';
import { csvTable, keptMarks, type Cell, type LearnerRecord, type StoredTry } from '../wire';

/** A stored try run and graded again, as far as a table has room for it. */
export interface TableTry {
  result: { travel_m: number; peak_height_m: number };
  grade: Pick<Grade, 'marks' | 'passed'>;
}

const COLUMNS = [
  'kind',
  'at',
  'what',
  'phase',
  'marks',
  'passed',
  'travel_m',
  'peak_height_m',
  'guess_m',
  'guess_lifted',
  'guess_down',
  'answer',
  'right',
  'model',
  'marks_model'
] as const;

type Row = Partial<Record<(typeof COLUMNS)[number], Cell>>;

const yesOrNo = (is?: boolean) => (is === undefined ? undefined : is ? 'yes' : 'no');

/**
 * The whole record as one table, CSV (RFC 4180) in SI, a row each: tries, predictions, answers to
 * questions, lessons. `graded` gives null for a try that today's model cannot run: its row has no
 * figures, and marks only if it kept them. `marks_model` is the version that gave the marks.
 */
export function recordCsv(
  { tries, predictions, answers, progress }: LearnerRecord,
  graded: (made: StoredTry) => TableTry | null
): string {
  const rows: Row[] = [
    ...tries.map((made) => tryRow(made, graded(made))),
    ...predictions.map(({ at, lesson, station, option, said }) => ({
      kind: 'prediction',
      at,
      what: `${lesson}/${station}`,
      answer: said ?? option
    })),
    ...answers.map(({ at, item, seed, given, right, model }) => ({
      kind: 'answer',
      at,
      what: `${item}/${seed}`,
      answer: Array.isArray(given) ? given.join(' ') : given,
      right: yesOrNo(right),
      model
    })),
    ...progress.map(({ at, lesson, finished }) => ({
      kind: 'lesson',
      at: finished ?? at,
      what: lesson,
      answer: finished ? 'finished' : 'begun'
    }))
  ];
  return csvTable(COLUMNS, rows);
}

function tryRow(made: StoredTry, graded: TableTry | null): Row {
  const { at, challenge, phase = '', guess_m, guess_lifted, guess_down, model } = made;
  const kept = keptMarks(made, graded && graded.grade);
  return {
    kind: 'try',
    at,
    what: challenge,
    phase,
    marks: kept?.marks,
    passed: yesOrNo(kept?.passed),
    travel_m: graded?.result.travel_m,
    peak_height_m: graded?.result.peak_height_m,
    guess_m,
    guess_lifted: yesOrNo(guess_lifted),
    guess_down: yesOrNo(guess_down),
    model,
    marks_model: kept?.by
  };
}
