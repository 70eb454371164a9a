import { travelOf } from '$lib/practice';
import { decodeRod, encodeRod, type CodedRod } from '$lib/wire';
import type { RodInput } from '$lib/model';
import { DataError, formatLength, moveMarks, type Units } from '$lib/scoring';
import type { TryRun } from './try-runs';

/** What a link holds of a try: enough to run it again, and no word of who made it. */
export interface SentTry {
  readonly challenge: string;
  readonly input: RodInput;
}

/** The part of the address behind the #, which no server is ever sent. */
export function toHash({ challenge, input }: SentTry): string {
  const { elevation, azimuth, line_in } = encodeRod(input);
  const parts = {
    c: challenge,
    e: `${elevation}`,
    a: `${azimuth}`,
    ...(line_in && { l: line_in })
  };
  return new URLSearchParams(parts).toString();
}

/** The try again, to the step; null for what no link of ours holds. */
export function fromHash(hash: string): SentTry | null {
  const parts = new URLSearchParams(hash.replace(/^#/, ''));
  const challenge = parts.get('c');
  const [elevation, azimuth] = [angle(parts.get('e')), angle(parts.get('a'))];
  if (!challenge || elevation === null || azimuth === null) return null;
  const line_in = parts.get('l') ?? undefined;
  try {
    return { challenge, input: decodeRod({ elevation, azimuth, line_in }) };
  } catch (error) {
    if (error instanceof DataError) return null;
    throw error;
  }
}

/** A held angle is sent as its degrees, a moved one as letters, which always are more than a number's. */
function angle(text: string | null): CodedRod['elevation'] | null {
  if (text === null || text === '') return null;
  return /^-?\d{1,3}(\.\d+)?$/.test(text) ? Number(text) : text;
}

/** "I meant 1 ft. The bait went 1 ft 9 in. Can you beat it?" */
export function sendWords({ challenge, result, grade }: TryRun, units: Units): string {
  const travel = travelOf(challenge);
  const length = (m: number) => formatLength(m, units);
  const said = travel
    ? `I wanted ${length(travel.target_m)}. The jig went ${length(result.travel_m)}.`
    : `${challenge.title}: ${moveMarks(grade)} of 100.`;
  return `${said} Can you beat it?`;
}

/** What the one who opens the link is told. */
export function sentWords(graded: TryRun, units: Units): string {
  const { challenge, result, grade } = graded;
  const travel = travelOf(challenge);
  const length = (m: number) => formatLength(m, units);
  return travel
    ? `Wanted: ${length(travel.target_m)}. The jig went ${length(result.travel_m)}.`
    : `${moveMarks(grade)} of 100.`;
}
