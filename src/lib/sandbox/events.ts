import { SKIP_M, type Result } from '$lib/model';
import {
  formatLength,
  formatTime,
  handRun,
  skippedWords,
  tipTravel,
  type Units
} from '$lib/scoring';

/** A try, in its water. */
type Made = Parameters<typeof handRun>[0] & { readonly result: Result };

/** A moment of a try worth a word. */
export interface Event {
  readonly t_s: number;
  readonly text: string;
}

/** What happened in a try, in order: how the bait came to rest, each hop, then where it ended. */
export function eventsOf(made: Made, units: Units): Event[] {
  const { result } = made;
  const before = result.events.flatMap((event) => {
    if (event.kind !== 'pulled in' && event.kind !== 'slid down') return [];
    return [{ t_s: event.t_s, text: settledWords(event.kind, formatLength(event.by_m, units)) }];
  });
  const hops = result.hops.flatMap((hop) => [
    { t_s: hop.t_s, text: 'The jig left the bottom.' },
    {
      t_s: hop.t_s + hop.duration_s,
      text: `Down again: ${formatLength(hop.height_m, units)} high, ${formatLength(hop.length_m, units)} along.`
    }
  ]);
  const { t_s } = result.trace;
  return [...before, ...hops, { t_s: t_s[t_s.length - 1], text: trySummaryOf(made, units) }];
}

function settledWords(kind: 'pulled in' | 'slid down', length: string): string {
  return kind === 'pulled in'
    ? `The tight line pulled the jig in ${length} before you moved.`
    : `The jig slid down ${length} before the line held it.`;
}

/** The whole try in a sentence. */
export function trySummaryOf({ setup, result }: Made, units: Units): string {
  const tip = formatLength(tipTravel(handRun({ setup }, result)), units);
  const bait = formatLength(result.travel_m, units);
  return `The tip went ${tip}, the jig ${bait}. ${airWords(result, units)}.`;
}

function airWords({ hops, airborne_s, peak_height_m }: Result, units: Units): string {
  if (hops.length > 0) {
    return `It was off the bottom for ${formatTime(airborne_s)}, ${formatLength(peak_height_m, units)} at most`;
  }
  return peak_height_m < SKIP_M ? 'It stayed on the bottom' : skippedWords(units);
}
