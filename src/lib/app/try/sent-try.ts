import { travelOf } from '$lib/practice';
import { decodeRod, encodeRod, type CodedRod } from '$lib/wire';
import type { RodInput } from '$lib/model';
import { DataError, describeTry, formatLength, moveMarks, type Units } from '$lib/scoring';
import type { TryRun } from './try-runs';

/** What a link holds of a try: enough to run it again, and no word of who made it. */
export interface SentTry {
  readonly challenge: string;
  readonly input: RodInput;
  /** Made with the jig out of sight where its task has it in sight: whoever is sent it makes theirs alike. */
  readonly isHidden?: boolean;
}

/** The part of the address behind the #, which no server is ever sent. */
export function toHash({ challenge, input, isHidden }: SentTry): string {
  const { elevation, azimuth, line_in } = encodeRod(input);
  const parts = {
    c: challenge,
    e: shortened(`${elevation}`),
    a: shortened(`${azimuth}`),
    ...(line_in && { l: shortened(line_in) }),
    ...(isHidden && { h: '1' })
  };
  return new URLSearchParams(parts).toString();
}

/** Longer ones are none of ours, letters: two minutes of a hand and a reel that never rest take fewer. */
const LONGEST_HASH = 100_000;

/** A still rod is a row of the letter for no change: a dot and the row's length in two letters. */
const STILL = 'A';
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

function shortened(letters: string): string {
  return letters.replace(/A{4,4095}/g, ({ length }) => {
    const [high, low] = [Math.floor(length / LETTERS.length), length % LETTERS.length];
    return `.${LETTERS[high]}${LETTERS[low]}`;
  });
}

function whole(short: string): string {
  return short.replace(/\.([\w-])([\w-])/g, (_, high: string, low: string) =>
    STILL.repeat(LETTERS.indexOf(high) * LETTERS.length + LETTERS.indexOf(low))
  );
}

/** The try again, to the step; null for what no link of ours holds. */
export function fromHash(hash: string): SentTry | null {
  if (hash.length > LONGEST_HASH) return null;
  const parts = new URLSearchParams(hash.replace(/^#/, ''));
  const challenge = parts.get('c');
  const [elevation, azimuth] = [angle(parts.get('e')), angle(parts.get('a'))];
  if (!challenge || elevation === null || azimuth === null) return null;
  const reeled = parts.get('l');
  const line_in = reeled === null ? undefined : whole(reeled);
  try {
    const input = decodeRod({ elevation, azimuth, line_in });
    return parts.get('h') === '1' ? { challenge, input, isHidden: true } : { challenge, input };
  } catch (error) {
    if (error instanceof DataError) return null;
    throw error;
  }
}

/** A held angle is sent as its degrees, a moved one as letters, which always are more than a number's. */
function angle(text: string | null): CodedRod['elevation'] | null {
  if (text === null || text === '') return null;
  return /^-?\d{1,3}(\.\d+)?$/.test(text) ? Number(text) : whole(text);
}

/** What the one who gets it is asked: nobody beats all there is to get. */
export const asksOf = ({ grade }: Pick<TryRun, 'grade'>) =>
  moveMarks(grade) < 100 ? 'Can you beat it?' : 'Can you do it, too?';

/** What was asked and what came of it, a sentence each; of a task that asks no travel, its name first. */
export function toldByHand({ challenge, result, grade }: TryRun, units: Units): string[] {
  const travel = travelOf(challenge);
  const length = (m: number) => formatLength(m, units);
  return travel
    ? [`I wanted ${length(travel.target_m)}.`, `The jig went ${length(result.travel_m)}.`]
    : [`${challenge.title}.`, bySender(describeTry(challenge, { result, grade }, units, null).did)];
}

/** What was said to who made the try, as they say it on. */
function bySender(did: string): string {
  return did.replace(/\bfrom you\b/g, 'from me').replace(/\byou\b/gi, 'I');
}

/** "I wanted 1 ft. The jig went 1 ft 9 in. 40 of 100. Can you beat it?" */
export function sendWords(graded: TryRun, units: Units): string {
  return [...toldByHand(graded, units), `${moveMarks(graded.grade)} of 100.`, asksOf(graded)].join(
    ' '
  );
}

/** What the one who opens the link is told: what there is to beat. */
export function sentWords({ challenge, result, grade }: TryRun, units: Units): string {
  const travel = travelOf(challenge);
  const length = (m: number) => formatLength(m, units);
  const marks = `${moveMarks(grade)} of 100.`;
  return travel
    ? `Wanted: ${length(travel.target_m)}. The jig went ${length(result.travel_m)}. ${marks}`
    : marks;
}

/** How the best of one's own tries stands beside it; '' before there is one. */
export function beatenWords({ grade }: Pick<TryRun, 'grade'>, own: readonly number[]): string {
  if (own.length === 0) return '';
  const [best, sent] = [Math.max(...own), moveMarks(grade)];
  if (best > sent) return `You: ${best}. You beat it.`;
  return best === sent ? `You: ${best}. Even.` : `You: ${best}. Not yet.`;
}
