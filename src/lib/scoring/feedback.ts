import type { Result } from '../model';
import type { Challenge } from './challenge';
import type { Correction } from './correction';
import { formatLength, formatTime, type Units } from './display';
import type { Grade } from './grade';
import { tipTravel } from './measure';

/** Three short sentences: what the bait did, why, and the one thing to change. */
export interface Feedback {
  did: string;
  why: string;
  change: string;
}

export function describeTry(
  _challenge: Challenge,
  result: Result,
  grade: Grade,
  units: Units,
  correction?: Correction | null
): Feedback {
  const tip = formatLength(tipTravel(result), units);
  const bait = formatLength(result.travel_m, units);
  const hop = result.hops[0];
  return {
    did: `The tip went ${tip} and the bait ${bait}.`,
    why: hop
      ? `It left the bottom at ${formatTime(hop.t_s)}, up to ${formatLength(result.peak_height_m, units)}.`
      : 'It stayed on the bottom.',
    change:
      correction && !grade.passed
        ? `Move the tip ${formatLength(correction.tipTravel_m, units)}, in ${formatTime(correction.duration_s)} or more.`
        : 'Make the same move again.'
  };
}
