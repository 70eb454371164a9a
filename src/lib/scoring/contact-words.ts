import { OFF_BOTTOM_M } from '../model';
import { formatLength, type Units } from './display';

export const SKIPPED_ALONG = 'It skipped along the bottom';

/** Of a bait that left the bottom, but not so far that a hand could mean or avoid it. */
export function skippedWords(units: Units): string {
  return `${SKIPPED_ALONG}, less than ${formatLength(OFF_BOTTOM_M, units)} up`;
}
