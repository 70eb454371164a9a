import { mergeRecords } from '$lib/practice';
import { calendarDay } from '$lib/shell';
import {
  type HomeView,
  type LearnerRecord,
  readDocument,
  RECORD_FORMAT,
  RECORD_VERSION
} from '$lib/wire';
import { readHomeLink, answerForRecord } from './home-link';

/**
 * What came home as a record, to be merged into this device's. Of the answers to questions those
 * whose owner said how they were come by: without that the review cannot go on from them.
 * @param hash what stands behind the # of the link
 * @param at ISO time
 */
export function homeRecord(
  { tries, predictions, answers: given }: HomeView,
  hash: string,
  at: string
): LearnerRecord {
  const { link, reports } = readHomeLink(hash);
  const [code] = link.split('-');
  const answers = given.flatMap((one) => {
    const report = reports[one.round];
    return report ? [answerForRecord(code, one, report)] : [];
  });
  const made = { tries, predictions, answers };
  return readDocument({ format: RECORD_FORMAT, version: RECORD_VERSION, ...made }, at);
}

/** The day of the clinic by the reader's calendar, from what was sent in it; else the server's, in UTC. */
export function heldOn({ held, tries, predictions, answers }: HomeView): string {
  const times = [...tries, ...predictions, ...answers].map(({ at }) => at).sort();
  return times.length > 0 ? calendarDay(times[0]) : held;
}

const sizeOf = ({ tries, predictions, answers }: LearnerRecord) =>
  tries.length + predictions.length + answers.length;

/** How much of it this device does not have yet. */
export function newIn(mine: LearnerRecord, home: LearnerRecord): number {
  return sizeOf(mergeRecords(mine, home)) - sizeOf(mine);
}

/** "2 answers said beforehand, 1 question answered and 4 tries": of each kind that there is. */
export function countsOf({ tries, predictions, answers }: LearnerRecord): string {
  const said = [
    counted(predictions.length, 'answer said beforehand', 'answers said beforehand'),
    counted(answers.length, 'question answered', 'questions answered'),
    counted(tries.length, 'try', 'tries')
  ].filter((text) => text !== '');
  return said.length > 1 ? `${said.slice(0, -1).join(', ')} and ${said.at(-1)}` : (said[0] ?? '');
}

function counted(count: number, one: string, more: string): string {
  return count === 0 ? '' : `${count} ${count === 1 ? one : more}`;
}
