import { readTestCells, type StoredTest, type TestCells, type TestColumn } from '$lib/wire';
import type { Units } from '$lib/scoring';
import { written } from '$lib/app/gear';

/** A test as it is being typed. */
export interface TestRow {
  key: number;
  cells: Record<RowField, string>;
  /** What the table does not show: a move that was filmed, and the points of the film. */
  kept?: StoredTest;
}
export type RowField = Exclude<TestColumn, 'elevation_deg'>;

export const FIELD_NAMES: Record<RowField, string> = {
  move: 'Move',
  from_deg: 'From',
  to_deg: 'To',
  duration_s: 'Seconds',
  slack_m: 'Slack',
  depth_m: 'Depth',
  out_m: 'Jig out',
  travel_m: 'Jig went',
  travel_sd_m: '±',
  peak_height_m: 'Highest',
  height_sd_m: '± ',
  note: 'Note'
};

const EMPTY: TestRow['cells'] = {
  move: 'sweep',
  from_deg: '0',
  to_deg: '',
  duration_s: '',
  slack_m: '',
  depth_m: '',
  out_m: '',
  travel_m: '',
  travel_sd_m: '',
  peak_height_m: '',
  height_sd_m: '',
  note: ''
};

export function emptyRow(key: number, change: Partial<TestRow['cells']> = {}): TestRow {
  return { key, cells: { ...EMPTY, ...change } };
}

/** The same move in the same water, made once more: of a filmed move an empty row. */
export function likeRow({ cells }: TestRow, key: number): TestRow {
  const { move, from_deg, to_deg, duration_s, slack_m, depth_m, out_m } = cells;
  if (move === 'filmed') return emptyRow(key);
  return emptyRow(key, { move, from_deg, to_deg, duration_s, slack_m, depth_m, out_m });
}

export function rowOf(test: StoredTest, key: number, units: Units): TestRow {
  const { move, start, note } = test;
  const length = (m: unknown) => (typeof m === 'number' ? written(units).length(m) : '');
  const isTyped = move.kind === 'lift' || move.kind === 'sweep';
  const cells = {
    move: isTyped ? move.kind : 'filmed',
    from_deg: isTyped ? `${move.from_deg}` : '',
    to_deg: isTyped ? `${move.to_deg}` : '',
    duration_s: isTyped ? `${move.duration_s}` : '',
    slack_m: length(start?.slack_m),
    depth_m: length(test.depth_m),
    out_m: length(start?.bait_x_m),
    travel_m: length(test.travel_m),
    travel_sd_m: length(test.travel_sd_m),
    peak_height_m: length(test.peak_height_m),
    height_sd_m: length(test.height_sd_m),
    note
  };
  return { key, cells, kept: test };
}

export interface RowFault {
  key: number;
  field: RowField;
  says: string;
}

/** Reads all rows; a row of which nothing was typed is none. */
export function readRows(rows: readonly TestRow[], units: Units) {
  const faults: RowFault[] = [];
  const tests: StoredTest[] = [];
  rows.forEach((row, i) => {
    if (isEmpty(row)) return;
    const read = readRow(row, units);
    if (!('says' in read)) tests.push(read);
    else {
      const field = read.column === 'elevation_deg' ? 'move' : read.column;
      const says = `Row ${i + 1}: ${FIELD_NAMES[field].trim()} ${read.says}`;
      faults.push({ key: row.key, field, says });
    }
  });
  return { tests, faults };
}

function isEmpty({ cells, kept }: TestRow): boolean {
  const { to_deg, duration_s, travel_m, peak_height_m } = cells;
  return !kept && [to_deg, duration_s, travel_m, peak_height_m].every((cell) => cell.trim() === '');
}

function readRow({ cells, kept }: TestRow, units: Units) {
  const [unit, long] = units === 'metric' ? (['cm', 'm'] as const) : (['in', 'ft'] as const);
  const isFilmed = cells.move === 'filmed';
  const said: TestCells = Object.fromEntries(
    Object.entries(cells).map(([column, text]) => {
      return [column, { text, unit: LONG.has(column) ? long : unit }];
    })
  );
  const stand = { text: '0', unit } as const;
  const read = readTestCells(
    isFilmed
      ? {
          ...said,
          move: { text: 'lift', unit },
          from_deg: stand,
          to_deg: stand,
          duration_s: { text: '1', unit }
        }
      : { ...said, elevation_deg: { text: elevationOf(kept), unit } }
  );
  if ('says' in read || !kept) return read;
  const { filmed } = kept;
  return { ...read, ...(isFilmed && { move: kept.move }), ...(filmed && { filmed }) };
}

/** Lengths that are told in feet or metres. */
const LONG: ReadonlySet<string> = new Set(['depth_m', 'out_m']);

function elevationOf(kept: StoredTest | undefined): string {
  return kept?.move.kind === 'sweep' ? `${kept.move.elevation_deg}` : '0';
}
