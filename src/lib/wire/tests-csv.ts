import { clockHourToDeg } from '../model';
import { typedLength_m, typedNumber, type LengthUnit } from '../scoring';
import { csvTable, readCsv } from './csv';
import type { StoredTest } from './test-session';

/** Columns of a table of tests, as docs/session-format.md has them. */
const COLUMNS = [
  'move',
  'from_deg',
  'to_deg',
  'duration_s',
  'elevation_deg',
  'slack_m',
  'depth_m',
  'out_m',
  'travel_m',
  'travel_sd_m',
  'peak_height_m',
  'height_sd_m',
  'note'
] as const;
export type TestColumn = (typeof COLUMNS)[number];

/** What a length's column may be called instead: with another unit. */
const UNITS: readonly LengthUnit[] = ['m', 'cm', 'mm', 'ft', 'in'];
const MOST_DEG = 360;
const MOST_S = 600;

interface ReadTests {
  tests: StoredTest[];
  /** A row that could not be read, by the number it has in the table, and why. */
  faults: { row: number; says: string }[];
}

/** Reads a pasted table. Rows that cannot be read are named; where there is one, no row is to be kept. */
export function readTestsCsv(text: string): ReadTests {
  const { columns, rows } = readCsv(text);
  const names = columns.map(namesColumn);
  const unknown = columns.filter((_, i) => names[i] === null);
  const missing = (['from_deg', 'to_deg', 'duration_s'] as const).filter(
    (column) => !names.some((one) => one?.column === column)
  );
  const faults = [
    ...unknown.map((name) => ({ row: 0, says: `No column is called “${name}”.` })),
    ...missing.map((name) => ({ row: 0, says: `The column ${name} is missing.` })),
    ...(rows.length === 0 ? [{ row: 0, says: 'There are no rows under the column names.' }] : [])
  ];
  if (faults.length > 0) return { tests: [], faults };
  const tests: StoredTest[] = [];
  rows.forEach((cells, i) => {
    const read = readTestCells(
      Object.fromEntries(
        columns.flatMap((name, at) => {
          const one = names[at];
          return one ? [[one.column, { text: cells[name], unit: one.unit }]] : [];
        })
      )
    );
    if ('says' in read) faults.push({ row: i + 1, says: `${read.column} ${read.says}` });
    else tests.push(read);
  });
  return { tests, faults };
}

export function testsCsv(tests: readonly StoredTest[]): string {
  const rows = tests.flatMap((one): Partial<Record<TestColumn, string | number>>[] => {
    const { move, start, depth_m, note, travel_m, travel_sd_m, peak_height_m, height_sd_m } = one;
    if (move.kind !== 'lift' && move.kind !== 'sweep') return [];
    const { kind, from_deg, to_deg, duration_s } = move;
    const [slack_m, out_m] = [start?.slack_m, start?.bait_x_m].map((one) =>
      typeof one === 'number' ? one : undefined
    );
    const angles = { from_deg, to_deg, duration_s };
    const elevation = move.kind === 'sweep' ? { elevation_deg: move.elevation_deg } : {};
    const measured = { travel_m, travel_sd_m, peak_height_m, height_sd_m };
    return [{ move: kind, ...angles, ...elevation, slack_m, depth_m, out_m, ...measured, note }];
  });
  return csvTable(COLUMNS, rows);
}

interface Named {
  column: TestColumn;
  unit: LengthUnit;
}

function namesColumn(name: string): Named | null {
  const spelled = name === 'kind' ? 'move' : name;
  const exact = COLUMNS.find((column) => column === spelled);
  if (exact) return { column: exact, unit: 'm' };
  const unit = UNITS.find((one) => spelled.endsWith(`_${one}`));
  const column = unit && COLUMNS.find((one) => one === `${spelled.slice(0, -unit.length)}m`);
  return unit && column ? { column, unit } : null;
}

export type TestCells = Partial<Record<TestColumn, { text: string; unit: LengthUnit }>>;

/** A cell that cannot be read: "must be an angle". */
export interface CellFault {
  column: TestColumn;
  says: string;
}

/** One test from its cells; a length without a unit is in the cell's. */
export function readTestCells(cells: TestCells): StoredTest | CellFault {
  const said = (column: TestColumn) => cells[column]?.text.trim() ?? '';
  const kind = said('move').toLowerCase() || 'sweep';
  if (kind !== 'sweep' && kind !== 'lift')
    return { column: 'move', says: `must be sweep or lift, not “${said('move')}”.` };
  const [from_deg, to_deg] = [typedAngle_deg(said('from_deg')), typedAngle_deg(said('to_deg'))];
  if (from_deg === null) return { column: 'from_deg', says: 'must be an angle, 0 or 9:00.' };
  if (to_deg === null) return { column: 'to_deg', says: 'must be an angle, 60 or 11:00.' };
  const duration_s = typedNumber(said('duration_s'));
  if (duration_s === null || duration_s < 0.01 || duration_s > MOST_S) {
    return { column: 'duration_s', says: 'must be seconds, from 0.01 to 600.' };
  }
  const elevation_deg = said('elevation_deg') === '' ? 0 : typedAngle_deg(said('elevation_deg'));
  if (elevation_deg === null) return { column: 'elevation_deg', says: 'must be an angle.' };
  const lengths = readLengths(cells);
  if ('says' in lengths) return lengths;
  const { slack_m, out_m, ...measured } = lengths;
  const start = {
    ...(slack_m !== undefined && { slack_m }),
    ...(out_m !== undefined && { bait_x_m: out_m })
  };
  return {
    move:
      kind === 'sweep'
        ? { kind, from_deg, to_deg, duration_s, elevation_deg }
        : { kind, from_deg, to_deg, duration_s },
    ...(Object.keys(start).length > 0 && { start }),
    ...measured,
    note: said('note').slice(0, 200)
  };
}

const LENGTHS = {
  slack_m: [0, 10],
  depth_m: [0.1, 80],
  out_m: [0.1, 100],
  travel_m: [-100, 100],
  travel_sd_m: [1e-4, 100],
  peak_height_m: [-100, 100],
  height_sd_m: [1e-4, 100]
} as const;
type LengthColumn = keyof typeof LENGTHS;

function readLengths(cells: TestCells): Partial<Record<LengthColumn, number>> | CellFault {
  const read: Partial<Record<LengthColumn, number>> = {};
  for (const column of Object.keys(LENGTHS) as LengthColumn[]) {
    const cell = cells[column];
    if (!cell || cell.text.trim() === '') continue;
    const m = typedLength_m(cell.text, cell.unit);
    const [least, most] = LENGTHS[column];
    if (m === null || m < least || m > most)
      return { column, says: `must be a length, not “${cell.text}”.` };
    read[column] = m;
  }
  return read;
}

/** Degrees, or a clock hour with its minutes. */
function typedAngle_deg(text: string): number | null {
  const [, hour, minutes] = /^(\d{1,2}):(\d\d)$/.exec(text.trim()) ?? [];
  if (hour !== undefined) return clockHourToDeg(Number(hour) + Number(minutes) / 60);
  const deg = typedNumber(text.replace(/°\s*$/, ''));
  return deg !== null && Math.abs(deg) <= MOST_DEG ? deg : null;
}
