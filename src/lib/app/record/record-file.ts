import { type LearnerRecord, readDocument, RecordError, toDocument } from '$lib/wire';
import { calendarDay } from '$lib/shell';

/** Bigger than years of practice; a larger file is some other file, and would freeze the page. */
const LARGEST_FILE_BYTES = 200e6;

export type Opened = { record: LearnerRecord } | { fault: string };

/** The record as a file to keep, named by the day of `at` (an ISO time). */
export function recordFile(record: LearnerRecord, at: string): File {
  const text = JSON.stringify(toDocument(record), null, 1);
  return new File([text], `feltfoot-record-${calendarDay(at)}.json`, { type: 'application/json' });
}

/** Reads a file that the learner chose; what is wrong with it is said in words for them. */
export async function openRecordFile(file: Blob, at: string): Promise<Opened> {
  if (file.size > LARGEST_FILE_BYTES) return { fault: 'This file is too big to be a record.' };
  const text = await file.text();
  try {
    return { record: readDocument(JSON.parse(text), at) };
  } catch (error) {
    if (error instanceof RecordError) return { fault: error.message };
    if (error instanceof SyntaxError) return { fault: 'This isn’t a Feltfoot record.' };
    throw error;
  }
}
