import type { Result } from '../model';
import type { Challenge } from './challenge';
import { BEAT_S, type Correction } from './correction';
import { formatLength, formatTime, type Units } from './display';
import type { Fault } from './fault';
import { ROD_BUTTONS } from './rod-buttons';
import { leftBottomAt, tipSeconds, tipTravel } from './run-measures';
import { isAsFarAs, isSlowerThan } from './same-move';
import { tipMotionOf, type TipMotion } from './tip-motion';

type Plane = Challenge['plane'];
/** Its time as it stands beside the rod. */
type Moved = TipMotion & {
  readonly shown_s: number;
  /** When in the motion it was too quick, 0 to 1: as that threw the jig up, else at its fastest. */
  readonly burstAt: number;
};
type Words = (hand: Moved, units: Units, plane: Plane) => string;

/** The one thing to change, as a guide says it. The hand's own figure is told where it explains. */
const ADVICE: Record<Exclude<Fault, 'none'>, Words> = {
  still: () => 'Move the rod',
  towards: (_hand, _units, plane) =>
    `Pull away from the jig: hold ${ROD_BUTTONS[plane][1]}, not ${ROD_BUTTONS[plane][-1]}`,
  forward_first: (_hand, _units, plane) =>
    `You ${plane === 'lift' ? 'lowered the rod' : 'swung the tip forward'} first, and that made slack`,
  slack: ({ pulled_m }, units) =>
    `Keep going: the ${formatLength(pulled_m, units)} you pulled only took up slack`,
  gave_back: ({ gaveBack_m }, units) =>
    `Don’t let the tip swing back: it gave back ${formatLength(gaveBack_m, units)} of line`,
  // Of several moves the whole time holds the rests, too.
  too_fast: ({ shown_s, isOne }) =>
    isOne ? `Go slower: the tip took ${formatTime(shown_s)}` : 'Go slower',
  too_slow: ({ shown_s }) => `Go quicker: the tip took ${formatTime(shown_s)}`,
  jerk: ({ burstAt }) => `Pull evenly: you ${burstWords(burstAt)}`,
  ran_on: () => 'Go slower: at that pace the jig keeps going',
  drifted: () => 'Press Done as the rod stops: the boat keeps dragging the jig',
  too_far: () => 'Stop sooner',
  too_short: () => 'Keep going',
  reel: () => 'Leave the reel alone: the rod moves the jig',
  no_hops: () => 'Lift quicker, so that it leaves the bottom',
  slack_hops: (_hand, _units, plane) =>
    plane === 'lift'
      ? 'Leave the rod up between hops: lower it all the way and the next lift only takes up slack'
      : 'Leave the rod back between hops: swing it forward and the next pull only takes up slack',
  few_hops: () => 'Make more hops',
  many_hops: () => 'Make fewer hops',
  low_hops: () => 'Put a little more into the lift',
  tiny_hops: () => 'Lift farther and harder',
  high_hops: () => 'Stop the lift sooner'
};

/** The last sentence, with the move that would have done it where there is one; '' where nothing is to change. */
export function changeSentence(
  fault: Fault,
  plane: Plane,
  result: Result,
  units: Units,
  correction?: Correction | null
): string {
  if (fault === 'none') return '';
  const move = correction && moveSentence(correction, units);
  if (fault === 'still' && move) return move;
  const hand = tipMotionOf(result);
  if (fault === 'too_slow' && correction && isAsFarAs(correction, result))
    return `Same pull, quicker: ${tipTime(correction)}.`;
  if (correction && isShortAndSlow(fault, result, correction))
    return `Keep going, and pull quicker. ${moveSentence(correction, units)}`;
  const place = correction && PLACE[fault];
  if (place && isPaceRight(hand, correction))
    return placeSentence(place, result, units, correction);
  const isFarToo =
    fault === 'too_fast' &&
    correction &&
    tipTravel(result) > correction.tipTravel_m + correction.band_m;
  if (isFarToo)
    return `Move less, and slower: the tip ${tipWay(correction, units)}, ${tipTime(correction)}.`;
  const moved = { ...hand, shown_s: tipSeconds(result), burstAt: burstAt(result, hand) };
  const advice = ADVICE[fault](moved, units, plane);
  return move ? `${advice}. ${move}` : `${advice}.`;
}

/** Farther alone is half of it, where slack sinks away under a slow pull. */
function isShortAndSlow(fault: Fault, result: Result, correction: Correction): boolean {
  return fault === 'too_short' && isSlowerThan(correction, result);
}

/** Where to stop, for whom only that was wrong. */
const PLACE: Partial<Record<Fault, { alone: string; atOwnPace: string }>> = {
  too_far: { alone: 'Stop sooner, at', atOwnPace: 'stop at' },
  too_short: { alone: 'Keep going, to', atOwnPace: 'keep going:' }
};
/** Slower than the correction by more than this, a hand is told its time. */
const OWN_PACE = 1.5;

function placeSentence(
  { alone, atOwnPace }: { alone: string; atOwnPace: string },
  result: Result,
  units: Units,
  correction: Correction
): string {
  const way = `${tipWay(correction, units)} of tip`;
  const duration_s = timeAtOwnPace(result, correction);
  return duration_s <= OWN_PACE * correction.duration_s
    ? `Same pace, but ${atOwnPace} ${way}, ${tipTime({ duration_s })}.`
    : `${alone} ${way}, ${tipTime(correction)}.`;
}

/**
 * The correction for who went on or stopped short at a pace that does it: as far as it, at that pace and
 * not in its time, since a button turns the rod at its own.
 */
export function atOwnPace(fault: Fault, made: Result, correction: Correction): Correction {
  const { move } = correction;
  const isTurn = move.kind === 'sweep' || move.kind === 'lift';
  if (!PLACE[fault] || !isTurn || !isPaceRight(tipMotionOf(made), correction)) return correction;
  const duration_s = timeAtOwnPace(made, correction);
  if (duration_s > OWN_PACE * correction.duration_s) return correction;
  return { ...correction, duration_s, move: { ...move, duration_s } };
}

/** How long the correction's way takes at the pace of this hand, s, as it is counted. */
function timeAtOwnPace(made: Result, { tipTravel_m }: Correction): number {
  const time_s = (tipMotionOf(made).duration_s * tipTravel_m) / tipTravel(made);
  return Math.max(BEAT_S, Math.round(time_s / BEAT_S) * BEAT_S);
}

/** No faster at its fastest than the move that does it, and slower does it too. */
function isPaceRight({ peakSpeed_m_s }: TipMotion, { isSlowToo, result }: Correction): boolean {
  return isSlowToo && peakSpeed_m_s <= tipMotionOf(result).peakSpeed_m_s;
}

const tipWay = ({ tipTravel_m }: Correction, units: Units) => formatLength(tipTravel_m, units);
/** Told with each way: one that is gone farther in no more time is too fast. */
const tipTime = ({ duration_s }: Pick<Correction, 'duration_s'>) =>
  `in about ${formatTime(duration_s)}`;

/**
 * "Move the tip 1 ft 1 in slowly, in about 2 s." No limit: a hand that turns evenly may be quicker. What may
 * be off is said once, by the goal: of the jig.
 */
export function moveSentence(correction: Correction, units: Units): string {
  const slowly = correction.isSlowToo ? ' slowly' : '';
  return `Move the tip ${tipWay(correction, units)}${slowly}, ${tipTime(correction)}.`;
}

/** The same as it stands beside the rod in the next try: "Aim: tip 2 ft 1 in, in about 3.5 s." */
export function aimSentence(
  fault: Fault,
  made: Result,
  correction: Correction,
  isAtOwnPace: boolean,
  units: Units
): string {
  const pace = isAtOwnPace ? 'same pace, ' : paceWords(fault, made, correction);
  return `Aim: tip ${tipWay(correction, units)}, ${pace}${tipTime(correction)}.`;
}

function paceWords(fault: Fault, made: Result, correction: Correction): string {
  if (fault === 'jerk') return 'evenly, ';
  return fault === 'too_slow' || isShortAndSlow(fault, made, correction) ? 'quicker, ' : '';
}

/** Where the result says when it left the bottom, that is the moment. */
function burstAt(result: Result, { start_s, duration_s, peakAt }: TipMotion): number {
  const left_s = leftBottomAt(result);
  return left_s === null ? peakAt : (left_s - start_s) / duration_s;
}

function burstWords(share: number): string {
  if (share < 1 / 3) return 'started with a jerk';
  return share > 2 / 3 ? 'hurried at the end' : 'hurried half way';
}
