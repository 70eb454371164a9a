/**
 * One cell of a CSV table (RFC 4180): numbers to so many decimals, a tenth of a millimetre unless told
 * otherwise. Text that a spreadsheet would take for a formula is led by an apostrophe.
 */
export function csvCell(value: string | number | undefined, decimals = 4): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return `${Number(value.toFixed(decimals))}`;
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
