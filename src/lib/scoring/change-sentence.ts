import type { Result } from '../model';
import type { Correction } from './correction';
import { formatLength, formatTime, type Units } from './display';
import type { Fault } from './fault';
import { tipTravel } from './run-measures';
import { tipMotionOf, type TipMotion } from './tip-motion';

/** A give or take wider than this part of the way would let through what fails: it is not said. */
const WIDEST_BAND = 0.2;

type Words = (hand: TipMotion, units: Units) => string;

/** The one thing to change, as a guide says it. The hand's own figure is told where it explains. */
const ADVICE: Record<Exclude<Fault, 'none'>, Words> = {
  still: () => 'Move the rod',
  towards: () => 'Turn the rod away from the jig, not toward it',
  slack: ({ taken_m }, units) =>
    `Keep going: the ${formatLength(taken_m, units)} you pulled only took up slack`,
  gave_back: ({ gaveBack_m }, units) =>
    `Don’t let the tip swing back: it gave back ${formatLength(gaveBack_m, units)} of line`,
  too_fast: ({ duration_s }) => `Go slower: the tip was there in ${formatTime(duration_s)}`,
  jerk: ({ peakAt }) => `Pull evenly: you ${burstAt(peakAt)}`,
  ran_on: () => 'Go slower: at that pace the jig keeps going',
  too_far: () => 'Stop sooner',
  too_short: () => 'Keep going',
  reel: () => 'Leave the reel alone: the rod moves the jig',
  no_hops: () => 'Lift quicker, so that it leaves the bottom',
  few_hops: () => 'Make more hops',
  many_hops: () => 'Make fewer hops',
  low_hops: () => 'Lift a little quicker',
  high_hops: () => 'Stop the lift sooner'
};

/** The last sentence, with the move that would have done it where there is one. */
export function changeSentence(
  fault: Fault,
  result: Result,
  units: Units,
  correction?: Correction | null
): string {
  if (fault === 'none') return 'Nothing to change.';
  const move = correction && moveSentence(withoutFailed(correction, result), units);
  if (fault === 'still' && move) return move;
  const advice = ADVICE[fault](tipMotionOf(result), units);
  return move ? `${advice}. ${move}` : `${advice}.`;
}

/** No give or take where it would hold the way that the tip has just gone, and failed. */
function withoutFailed(correction: Correction, result: Result): Correction {
  const off_m = Math.abs(tipTravel(result) - correction.tipTravel_m);
  return off_m <= correction.band_m ? { ...correction, band_m: 0 } : correction;
}

/** "Move the tip 1 ft 1 in, give or take 1 in, in 2 s or more." */
export function moveSentence(
  { tipTravel_m, band_m, duration_s }: Correction,
  units: Units
): string {
  const way = formatLength(tipTravel_m, units);
  const band = formatLength(band_m, units);
  const isUseful = band_m <= WIDEST_BAND * tipTravel_m && !/^0\D/.test(band);
  const giveOrTake = isUseful ? `, give or take ${band}` : '';
  return `Move the tip ${way}${giveOrTake}, in ${formatTime(duration_s)} or more.`;
}

function burstAt(share: number): string {
  if (share < 1 / 3) return 'started with a jerk';
  return share > 2 / 3 ? 'hurried at the end' : 'hurried half way';
}
