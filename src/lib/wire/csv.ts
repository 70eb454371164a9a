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
