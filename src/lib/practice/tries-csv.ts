import { csvTable } from '../wire';
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

/** The tries as CSV in SI, a row each. */
export function triesCsv(marks: readonly Mark[]): string {
  return csvTable(COLUMNS, marks);
}
