import type { ClientProgress } from './progress';

/** Spreadsheets run a cell that begins like this; an apostrophe makes it text. */
const FORMULA = /^[=+\-@\t\r\n|%]/;
const NUMBER = /^-?\d+(\.\d+)?$/;

/** One cell of a CSV file, quoted, harmless to spreadsheets. A plain number stays a number. */
export function csvCell(value: string | number | boolean | null): string {
  const text = value === null ? '' : String(value);
  const safe = FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;
  return `"${safe.replaceAll('"', '""')}"`;
}

const HEAD = [
  ...['name', 'challenge', 'made_at', 'received_at', 'marks', 'passed', 'travel_m', 'target_m'],
  ...['contact_share', 'marks_on_phone', 'agrees', 'model']
];

/** Every try of every client, one a line. */
export function tryTable(clients: readonly ClientProgress[]): string {
  const lines = clients.flatMap(({ client, challenges }) =>
    challenges.flatMap(({ challenge, tries }) => {
      const travel = challenge.goals.find((goal) => goal.kind === 'travel');
      const target = travel?.kind === 'travel' ? travel.target_m : null;
      return tries.map(({ sent, graded, received_at }) => [
        ...[client.nickname, challenge.id, sent.at, received_at, graded.marks, graded.passed],
        ...[rounded(graded.travel_m), target, rounded(graded.contact), sent.marks],
        ...[graded.agrees, graded.model]
      ]);
    })
  );
  return [HEAD, ...lines].map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}

/** To the tenth of a millimetre: finer than the model tells. */
const rounded = (value: number) => Math.round(value * 1e4) / 1e4;
