/** A cell that begins like this is run by spreadsheets, in the wide letters of East Asia too. */
const FORMULA = /^[=+\-@\t\r\n|%＝＋－＠]/;

export type Cell = string | number | boolean | null | undefined;

/**
 * One cell of a CSV table (RFC 4180), harmless to spreadsheets: what they would take for a formula is
 * led by an apostrophe. Numbers to so many decimals, a tenth of a millimetre unless told otherwise.
 */
export function csvCell(value: Cell, decimals = 4): string {
  if (value === undefined || value === null) return '';
  if (typeof value === 'number') return `${Number(value.toFixed(decimals))}`;
  const text = String(value);
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows by column as a CSV table with the columns' names above. */
export function csvTable<C extends string>(
  columns: readonly C[],
  rows: readonly Partial<Record<C, Cell>>[],
  decimals = 4
): string {
  const lines = rows.map((row) =>
    columns.map((column) => csvCell(row[column], decimals)).join(',')
  );
  return [columns.join(','), ...lines, ''].join('\r\n');
}

/**
 * A table that was pasted or opened: RFC 4180, or with tabs or semicolons as spreadsheets write where a
 * comma is the decimal sign. The first line that is not empty names the columns.
 */
export function readCsv(text: string): { columns: string[]; rows: Record<string, string>[] } {
  const first = text.split(/\r?\n/).find((line) => line.trim() !== '') ?? '';
  const mark = ['\t', ';', ','].find((one) => first.includes(one)) ?? ',';
  const lines = cellsIn(text.replace(/^\ufeff/, ''), mark).filter((cells) =>
    cells.some((cell) => cell !== '')
  );
  const [head = [], ...rest] = lines;
  const columns = head.map((name) => name.toLowerCase().replace(/\s+/g, '_'));
  const rows = rest.map((cells) =>
    Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? '']))
  );
  return { columns, rows };
}

function cellsIn(text: string, mark: string): string[][] {
  const lines: string[][] = [[]];
  let cell = '';
  let isQuoted = false;
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (isQuoted) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') cell += text[++i];
      else isQuoted = false;
    } else if (sign === '"' && cell.trim() === '') {
      isQuoted = true;
      cell = '';
    } else if (sign === mark || sign === '\n') {
      lines[lines.length - 1].push(unguarded(cell));
      cell = '';
      if (sign === '\n') lines.push([]);
    } else cell += sign;
  }
  lines[lines.length - 1].push(unguarded(cell));
  return lines;
}

/** The apostrophe that csvCell puts before what a spreadsheet would run. */
function unguarded(cell: string): string {
  const text = cell.trim();
  return text.startsWith("'") && FORMULA.test(text.slice(1)) ? text.slice(1) : text;
}
