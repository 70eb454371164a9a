import {
  mergeRecords,
  readDocument,
  RECORD_FORMAT,
  RECORD_VERSION,
  type LearnerRecord
} from '$lib/practice';
import type { Home } from '$lib/server/clinic-home';

/** What came home as a record, to be merged into this device's. @param at ISO time */
export function homeRecord({ tries, predictions }: Home, at: string): LearnerRecord {
  const document = { format: RECORD_FORMAT, version: RECORD_VERSION, tries, predictions };
  return readDocument(document, at);
}

/** How much of it this device does not have yet. */
export function newIn(mine: LearnerRecord, home: LearnerRecord): number {
  const both = mergeRecords(mine, home);
  return (
    both.tries.length - mine.tries.length + (both.predictions.length - mine.predictions.length)
  );
}

export const counted = (count: number, one: string, more: string) =>
  `${count} ${count === 1 ? one : more}`;
