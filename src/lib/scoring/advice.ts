import type { Move } from '../model';
import { callAdvice } from './call';
import type { Challenge } from './challenge';
import { changeSentence } from './change-sentence';
import { needsSeveralMoves, type Correction } from './correction';
import { formatLength, type Units } from './display';
import { faultOf, isStill, type Fault } from './fault';
import { adviceOf, isReadFromHand, travelGoalOf } from './goals';
import { TOTAL_MARKS } from './pass-mark';
import { marksLost, isAsAsked, moveMarks, type Grade, type GradedRun } from './grade';
import { handRun } from './hand-run';
import { NO_MOVE_M, travelBeforeBite } from './run-measures';
import { isSameSteps, isSameTurn } from './same-move';
import { moveOfSteps, singleTurn, spokenSteps, type SpokenStep } from './spoken-move';
import { stepWords } from './step-words';

/** The move that is advised, in the steps in which it is said. */
export interface AdvisedMove {
  steps: readonly SpokenStep[];
  move: Move;
}

/**
 * What to do instead: the solved turn where there is one, else the challenge's own reference, both as
 * they are said. Null where it is no move of turns, rests and the reel.
 */
export function advisedMove(
  challenge: Challenge,
  correction?: Correction | null
): AdvisedMove | null {
  const solved = correction?.move;
  const isTurn = solved?.kind === 'sweep' || solved?.kind === 'lift';
  const steps = isTurn
    ? [singleTurn(challenge, solved)]
    : spokenSteps(challenge, challenge.reference);
  return steps && { steps, move: moveOfSteps(challenge, steps) };
}

/** The one thing to change: its words, and the move that they name, or null where they name none. */
export interface Advice {
  words: string;
  move: Move | null;
}

/**
 * `correction` is null where no single move does it, and undefined while that is not known: then no
 * figures are given. A move that has just failed is not named again.
 */
export function adviceFor(
  challenge: Challenge,
  { result, grade }: GradedRun,
  units: Units,
  correction?: Correction | null
): Advice {
  if (grade.call && isCallTheFix(grade))
    return { words: callAdvice(grade.call, result, units), move: null };
  const graded = { result: handRun(challenge, result), grade };
  const isIdle = neverMoved(challenge, graded);
  const lead = isIdle ? null : goalAdvice(graded);
  const fault = isIdle ? 'still' : faultOf(challenge, graded, correction);
  if (!lead && (fault === 'none' || (correction && !challenge.look_alikes)))
    return oneTurn(fault, challenge, graded, units, correction);
  const named = lead ? null : rightPlace(challenge, units);
  if (named && fault !== 'none')
    return { words: named, move: advisedMove(challenge, correction)?.move ?? null };
  const words = lead ? `${lead}.` : changeSentence(fault, graded.result, units);
  const isKnown = correction === null || needsSeveralMoves(challenge);
  const next = isKnown || lead ? nextSteps(challenge, graded, units) : null;
  if (!next) return { words, move: null };
  const isSaidTwice = lead && next.words.startsWith(lead);
  return { words: isSaidTwice ? next.words : `${words} ${next.words}`, move: next.move };
}

/** What cost most is the one thing to change: the call, or the move. */
export function isCallTheFix(grade: Pick<Grade, 'call' | 'goals'>): boolean {
  return grade.call !== null && grade.call.lost > TOTAL_MARKS - moveMarks(grade);
}

/** Their own advice says what to wait for, or to do, with a rod that was held. */
const HAVE_ADVICE_OF_REST = ['bottom_first', 'freed'];

/** Nothing was done where a move was asked: that comes before any finer advice. */
function neverMoved({ goals, setup }: Challenge, { result, grade }: GradedRun): boolean {
  if (moveMarks(grade) === TOTAL_MARKS || !isStill(result)) return false;
  if (goals.some(({ kind }) => HAVE_ADVICE_OF_REST.includes(kind))) return false;
  return (setup.drift_m_s ?? 0) !== 0 || Math.abs(travelBeforeBite(result)) < NO_MOVE_M;
}

/** Where the next try has another bottom, what this one asked for and no figures of the hand. */
function rightPlace({ look_alikes, setup, goals }: Challenge, units: Units): string | null {
  const ground = look_alikes && setup.bottom?.ground?.kind;
  const goal = travelGoalOf({ goals });
  return ground && goal ? `On ${ground}, stop at ${formatLength(goal.target_m, units)}.` : null;
}

const HARDLY = 'Hardly anything to change.';

function oneTurn(
  fault: Fault,
  challenge: Challenge,
  { result, grade }: GradedRun,
  units: Units,
  correction?: Correction | null
): Advice {
  // A hair outside costs a mark and no advice, and is told as that.
  if (fault === 'none' && !isAsAsked(grade)) return { words: HARDLY, move: null };
  const isNamed = fault !== 'none' && correction && !isSameTurn(result, correction);
  const named = isNamed ? correction : null;
  const words = changeSentence(fault, result, units, named);
  return { words, move: named && (advisedMove(challenge, named)?.move ?? null) };
}

/** The challenge's own move in steps, for who did another one. */
function nextSteps(challenge: Challenge, { result }: GradedRun, units: Units): Advice | null {
  const advised = advisedMove(challenge);
  const words = advised && stepWords(challenge.plane, advised.steps, units);
  if (!words || isSameSteps(challenge.setup, result, advised.move)) return null;
  return { words, move: advised.move };
}

/** Where a goal with advice of its own cost most, that: by what it missed itself, not by what was left undone. */
function goalAdvice({ result, grade }: GradedRun): string | null {
  const [worst] = grade.goals
    .filter((one) => isReadFromHand(one.goal) || adviceOf(one, result) !== null)
    .sort((a, b) => marksLost(b) - marksLost(a));
  return worst && marksLost(worst) > 0 ? adviceOf(worst, result) : null;
}
