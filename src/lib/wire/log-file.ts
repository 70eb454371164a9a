import * as v from 'valibot';
import { csvTable, readCsv } from './csv';
import { logEntry, MOST_ENTRIES, type LogEntry } from './log-entry';

const FORMAT = 'feltfoot-log';

/** A log as it leaves in a file. */
export function logText(entries: readonly LogEntry[]): string {
  return JSON.stringify({ format: FORMAT, version: 1, entries }, null, 1);
}

/** The entries without the names of their places. */
export function withoutPlaces(entries: readonly LogEntry[]): LogEntry[] {
  return entries.map((entry) => ({ ...entry, place: '' }));
}

/** What was read of a file: the entries, or by row what is wrong; then none is taken. */
export interface ReadLog {
  entries: LogEntry[];
  faults: { row: number; says: string }[];
}

/** Columns of a log as a table, as docs/log-format.md has them. */
const COLUMNS = [
  'id',
  'at',
  'on',
  'place',
  'plan',
  'outfit',
  'jig',
  'mass_kg',
  'depth_m',
  'ground',
  'temperature_C',
  'retrieve',
  'pace',
  'felt',
  'casts',
  'bites',
  'fish',
  'drops_s',
  'note'
] as const;
type LogColumn = (typeof COLUMNS)[number];
const NUMBERS: ReadonlySet<LogColumn> = new Set([
  'mass_kg',
  'depth_m',
  'temperature_C',
  'casts',
  'bites',
  'fish'
]);
/** Without these an entry says nothing. */
const NEEDED = ['on', 'jig', 'mass_kg', 'depth_m', 'ground', 'retrieve', 'casts'] as const;

/** As a table, what a camera showed left out. */
export function logCsv(entries: readonly LogEntry[]): string {
  const rows = entries.map(({ felt, drops_s, ...rest }) => ({
    ...rest,
    looks: undefined,
    felt: felt.join('; '),
    drops_s: drops_s.join(' ')
  }));
  return csvTable(COLUMNS, rows, 6);
}

/** For an entry that comes without: a fresh id, and the time of reading. */
export interface LogStamp {
  id: () => string;
  at: string;
}

/** Reads a log saved as JSON or as a table. */
export function readLog(text: string, stamp: LogStamp): ReadLog {
  return text.trimStart().startsWith('{') ? readLogJson(text) : readLogCsv(text, stamp);
}

function readLogJson(text: string): ReadLog {
  const file = v.strictObject({
    format: v.literal(FORMAT),
    version: v.literal(1),
    entries: v.pipe(v.array(v.unknown()), v.maxLength(MOST_ENTRIES))
  });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return refused('This isn’t a log. Choose one saved here.');
  }
  const parsed = v.safeParse(file, json, { abortEarly: true });
  if (!parsed.success) return refused('This isn’t a log. Choose one saved here.');
  return readEntries(parsed.output.entries);
}

function readLogCsv(text: string, stamp: LogStamp): ReadLog {
  const { columns, rows } = readCsv(text);
  const strange = columns.filter((name) => !named(name));
  const missing = NEEDED.filter((column) => !columns.some((name) => named(name) === column));
  const faults = [
    ...strange.map((name) => `No column is called “${name}”.`),
    ...missing.map((name) => `The column ${name} is missing.`),
    ...(rows.length === 0 ? ['There are no rows under the column names.'] : [])
  ];
  if (faults.length > 0) return { entries: [], faults: faults.map((says) => ({ row: 0, says })) };
  return readEntries(rows.map((row) => entryOf(row, stamp)));
}

/** A column by its name in small letters, as readCsv gives them. */
const named = (name: string) => COLUMNS.find((column) => column.toLowerCase() === name);

function entryOf(row: Record<string, string>, { id, at }: LogStamp): unknown {
  const said = Object.entries(row).flatMap(([name, text]): [string, unknown][] => {
    const column = named(name);
    if (!column || text === '') return [];
    return [[column, NUMBERS.has(column) ? Number(text) : text]];
  });
  const { felt, drops_s, ...rest } = Object.fromEntries(said) as Record<string, string>;
  return {
    id: id(),
    at,
    pace: 'steady',
    bites: 0,
    fish: 0,
    ...rest,
    felt: (felt ?? '')
      .split(';')
      .map((sign) => sign.trim())
      .filter(Boolean),
    drops_s: (drops_s ?? '').split(/\s+/).filter(Boolean).map(Number)
  };
}

function readEntries(given: readonly unknown[]): ReadLog {
  const entries: LogEntry[] = [];
  const faults: ReadLog['faults'] = [];
  given.forEach((one, i) => {
    const parsed = v.safeParse(logEntry, one, { abortEarly: true });
    if (parsed.success) entries.push(parsed.output);
    else faults.push({ row: i + 1, says: faultText(parsed.issues[0]) });
  });
  return { entries, faults };
}

function faultText(issue: v.BaseIssue<unknown>): string {
  const path = v.getDotPath(issue);
  return path ? `${path}: ${issue.message}.` : `${issue.message}.`;
}

const refused = (says: string): ReadLog => ({ entries: [], faults: [{ row: 0, says }] });
