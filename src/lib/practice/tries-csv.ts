import type { Mark } from './mark';

const COLUMNS = [
  'challenge',
  'at',
  'meant_m',
  'bait_m',
  'tip_m',
  'lift_m',
  'speed_m_s',
  'guess_m'
] as const;

/**
 * The tries as CSV (RFC 4180) in SI, a row each. Text that a spreadsheet would take for a formula is
 * led by an apostrophe.
 */
export function triesCsv(marks: readonly Mark[]): string {
  const rows = marks.map((mark) => COLUMNS.map((column) => cell(mark[column])).join(','));
  return [COLUMNS.join(','), ...rows, ''].join('\r\n');
}

/** One cell: numbers to a tenth of a millimetre, text safe from being run as a formula. */
export function cell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return `${Number(value.toFixed(4))}`;
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
