import { travelOf } from '../practice';
import type { Challenge } from '../scoring';
import type { ClientProgress, KeptAnswer, KeptTry } from './progress';

/** Spreadsheets run a cell that begins like this; an apostrophe makes it text. */
const FORMULA = /^[=+\-@\t\r\n|%]/;
const NUMBER = /^-?\d+(\.\d+)?$/;

/** One cell of a CSV file, quoted, harmless to spreadsheets. A plain number stays a number. */
export function csvCell(value: Cell): string {
  const text = value === null ? '' : String(value);
  const safe = FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;
  return `"${safe.replaceAll('"', '""')}"`;
}

type Cell = string | number | boolean | null;
type Line = Partial<Record<(typeof HEAD)[number], Cell>>;

/** What belongs to tries and what to answers side by side; `kind` says which a line is. */
const HEAD = [
  ...(['name', 'kind', 'of', 'made_at', 'received_at', 'right', 'agrees', 'model'] as const),
  ...(['marks', 'marks_on_phone', 'travel_m', 'target_m', 'contact_share'] as const),
  ...(['guess_m', 'guess_down', 'question', 'seed', 'answer', 'came_by'] as const)
];

/** Every try and every answer of every client, one a line. */
export function homeworkTable(clients: readonly ClientProgress[]): string {
  const lines = clients.flatMap(({ client: { nickname }, challenges, objectives }) => [
    ...challenges.flatMap(({ challenge, tries }) =>
      tries.map((one) => ({ name: nickname, ...tryLine(challenge, one) }))
    ),
    ...objectives.flatMap(({ answers }) =>
      answers.map((one) => ({ name: nickname, ...answerLine(one) }))
    )
  ]);
  const rows: Cell[][] = lines.map((line: Line) => HEAD.map((column) => line[column] ?? null));
  return [HEAD, ...rows].map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}

function tryLine(challenge: Challenge, { sent, graded, received_at }: KeptTry): Line {
  return {
    kind: 'try',
    of: challenge.id,
    made_at: sent.at,
    received_at,
    right: graded.passed,
    agrees: graded.agrees,
    model: graded.model,
    marks: graded.marks,
    marks_on_phone: sent.marks,
    travel_m: rounded(graded.travel_m),
    target_m: travelOf(challenge)?.target_m,
    contact_share: rounded(graded.contact),
    guess_m: sent.guess_m,
    guess_down: sent.guess_down
  };
}

function answerLine({ sent, graded, received_at }: KeptAnswer): Line {
  return {
    kind: 'answer',
    of: graded.objective,
    made_at: sent.at,
    received_at,
    right: graded.right,
    agrees: graded.agrees,
    model: graded.model,
    question: sent.item,
    seed: sent.seed,
    answer: Array.isArray(sent.given) ? sent.given.join(' ') : sent.given,
    came_by: sent.report
  };
}

/** To the tenth of a millimetre: finer than the model tells. */
const rounded = (value: number) => Math.round(value * 1e4) / 1e4;
