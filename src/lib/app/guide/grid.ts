import { AIM } from '$lib/practice';
import { askedParts, type Assignment, type ClientStanding, type PartCount } from '$lib/wire';

/** A homework of the grid. */
export interface GridHomework {
  id: string;
  task: Pick<Assignment, 'title' | 'lessons' | 'objectives' | 'lawn'> & {
    challenges: readonly { id: string; title: string }[];
  };
  standings: readonly ClientStanding[];
}

export interface GridColumn {
  key: string;
  nickname: string;
}

export interface GridRow {
  title: string;
  /** What is good of it: a try passes, an answer is right. */
  good: 'passed' | 'right';
  /** A cell a column; null where that client has not opened the homework. */
  cells: readonly (PartCount | null)[];
}

export interface GridBlock {
  id: string;
  title: string;
  /** The client's id in this homework, a column; null for who has not opened it. */
  clients: readonly (string | null)[];
  rows: readonly GridRow[];
}

/** More names than this are a club: its homework is read one by one. */
const MOST_COLUMNS = 40;

interface Named {
  lesson: (id: string) => string;
  objective: (id: string) => string;
}

/**
 * Clients across, parts of each homework down. A phone has a new secret for each homework, so a client is
 * known from one to the next by name alone; two of one name in the same homework are two columns.
 */
export function gridOf(homework: readonly GridHomework[], named: Named) {
  const keyed = homework.map(({ standings }) => keysOf(standings));
  const columns = new Map<string, GridColumn>();
  for (const all of keyed)
    for (const [key, { nickname }] of all)
      if (!columns.has(key)) columns.set(key, { key, nickname });
  const sorted = [...columns.values()].sort(
    (a, b) =>
      a.nickname.localeCompare(b.nickname, undefined, { numeric: true }) || (a.key < b.key ? -1 : 1)
  );
  const shown = sorted.slice(0, MOST_COLUMNS);
  const blocks = homework.map(({ id, task }, i): GridBlock => {
    const of = shown.map(({ key }) => keyed[i].get(key) ?? null);
    const rows = partsOf(task, named).map((row, part) => {
      return { ...row, cells: of.map((standing) => standing?.counts[part] ?? null) };
    });
    return { id, title: task.title, clients: of.map((one) => one?.id ?? null), rows };
  });
  return { columns: shown, blocks, leftOut: sorted.length - shown.length };
}

/** By name, letters alike, and a number for a second one of the same. */
function keysOf(standings: readonly ClientStanding[]): Map<string, ClientStanding> {
  const keys = new Map<string, ClientStanding>();
  for (const standing of standings) {
    const name = standing.nickname.trim().toLowerCase();
    let key = name;
    for (let n = 2; keys.has(key); n++) key = `${name} ${n}`;
    keys.set(key, standing);
  }
  return keys;
}

function partsOf(task: GridHomework['task'], named: Named): Omit<GridRow, 'cells'>[] {
  return askedParts(task).map(({ kind, id }) => {
    switch (kind) {
      case 'lesson':
        return { title: `Lesson: ${named.lesson(id)}`, good: 'passed' };
      case 'challenge':
        return { title: task.challenges.find((one) => one.id === id)?.title ?? id, good: 'passed' };
      case 'questions':
        return { title: `Questions: ${named.objective(id)}`, good: 'right' };
      case 'lawn':
        return { title: 'Ten on the lawn', good: 'passed' };
    }
  });
}

/** Whether fewer of what came were good than a part is meant for, the last try too: the guide says something of it. */
export const needsWord = ({ made, good, endsWell }: PartCount): boolean =>
  good !== null && made > 0 && !endsWell && good / made < AIM.least;

/** "6 of 8, 4 passed"; "done" or "to do" for what is only done or not. */
export function cellText({ made, good, of }: PartCount, word: GridRow['good']): string {
  if (good === null) return made >= of ? 'done' : 'to do';
  if (made === 0) return 'to do';
  return `${made} of ${of}, ${good} ${word}`;
}
