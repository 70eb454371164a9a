import { allLessons, findChallenge } from '$lib/course';
import { challengeOfTry, recordCsv } from '$lib/practice';
import { runAllTries, tryRuns } from '$lib/app/try';
import type { LearnerRecord } from '$lib/wire';
import { calendarDay } from '$lib/shell';

/** The record as a table, once every try has been run again; the page is left free meanwhile. */
export async function recordTable(record: LearnerRecord, at: string): Promise<File> {
  const lessons = allLessons();
  const tries = record.tries.flatMap((made) => {
    const challenge = challengeOfTry(made, (id) => findChallenge(id, lessons));
    return challenge ? [{ challenge, made }] : [];
  });
  await runAllTries(tries);
  const text = recordCsv(record, (made) => tryRuns.known(made) ?? null);
  return new File([text], `feltfoot-record-${calendarDay(at)}.csv`, { type: 'text/csv' });
}
