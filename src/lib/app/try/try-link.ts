import { decodeRod, encodeRod, type CodedRod } from '$lib/wire';
import type { RodInput } from '$lib/model';
import { DataError } from '$lib/scoring';

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
