import type { Move, Result } from '../model';
import { inButtonTime, stepInButtonTime } from './button-time';
import { callAdvice } from './call-words';
import { advisedTask, type Challenge } from './challenge';
import { aimSentence, atOwnPace, changeSentence } from './change-sentence';
import { needsSeveralMoves, type Correction } from './correction';
import { formatLength, type Units } from './display';
import { faultOf, isHopOnSlack, isStill, type Fault } from './fault';
import { adviceOf, adviceStepOf, isReadFromHand, travelGoalOf, type StepPart } from './goals';
import { PASS_MARK, TOTAL_MARKS } from './pass-mark';
import {
  isAsAsked,
  marksLost,
  moveMarks,
  type GoalGrade,
  type Grade,
  type GradedRun
} from './grade';
import { handRun } from './hand-run';
import { reeledInstead } from './reeled-instead';
import { NO_MOVE_M, tipTravel, travelBeforeBite } from './run-measures';
import { isSameSteps, isSameTurn } from './same-move';
import { moveOfSteps, singleTurn, spokenSteps, type SpokenStep } from './spoken-move';
import { stepWords } from './step-words';
import { tipMotionOf } from './tip-motion';

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
    : (spokenSteps(challenge, challenge.reference)?.map((one) =>
        stepInButtonTime(challenge, one)
      ) ?? null);
  return steps && { steps, move: moveOfSteps(challenge, steps) };
}

/** The one thing to change: its words, and the move that they name, or null where they name none. */
export interface Advice {
  words: string;
  move: Move | null;
  /** As short as it stands beside the rod in the next try. */
  aim: string;
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
  if (grade.call && isCallTheFix(grade)) {
    const { words, next } = callAdvice(challenge, grade.call, result, units);
    if (moveMarks(grade) >= PASS_MARK) return fix(words);
    // A move that failed by itself is to be made otherwise, too, however right the call.
    const moved = { result, grade: { ...grade, call: null } };
    const { move, aim } = adviceFor(challenge, moved, units, correction);
    return { words, move, aim: `${aim} ${next}` };
  }
  const reeled = reeledInstead(challenge, { result, grade }, units);
  if (reeled) return fix(reeled.change);
  const graded = { result: handRun(challenge, result), grade };
  const isIdle = neverMoved(challenge, graded);
  // Rests and rhythm are of hops that came off.
  const isOfHand = isIdle || isHopOnSlack(challenge, graded);
  const lead = isOfHand ? null : goalToFix(challenge, graded);
  const fault = isIdle ? 'still' : faultOf(challenge, graded, correction);
  if (!lead && (fault === 'none' || (correction && !challenge.look_alikes)))
    return oneTurn(fault, challenge, graded, units, correction);
  const named = lead ? null : rightPlace(challenge, units);
  if (named && fault !== 'none')
    return fix(named, advisedMove(challenge, correction)?.move ?? null);
  const words = lead
    ? leadWords(challenge, lead, graded)
    : changeSentence(fault, challenge.plane, graded.result, units);
  const isKnown = correction === null || needsSeveralMoves(challenge);
  if (!isKnown && !lead) return fix(words);
  const part = lead ? adviceStepOf(lead, graded.result) : FAULT_STEPS[fault];
  const isLate = lead?.goal.kind === 'bottom_first' && lead.value > 0;
  const next = part && nextStep(challenge, graded, units, part, isLate);
  if (!next) return fix(words);
  // What takes two steps says by them what was missed, and so does the way down.
  const said =
    isIdle || next.count > 1 || part === 'back' ? next.words : joined(words, next.words, lead);
  return { words: said, move: next.move, aim: next.words };
}

/** Until when to wait, and the count of it, are one order. */
function joined(words: string, next: string, lead: GoalGrade | null): string {
  return lead?.goal.kind === 'bottom_first'
    ? `${words.slice(0, -1)}: ${next[0].toLowerCase()}${next.slice(1)}`
    : `${words} ${next}`;
}

/** One whose words are all there is to it. */
const fix = (words: string, move: Move | null = null): Advice => ({ words, move, aim: words });

/** The step that is named with what is read from the hand. */
const FAULT_STEPS: Record<Fault, StepPart | null> = {
  none: null,
  still: 'pull',
  towards: 'pull',
  forward_first: 'pull',
  slack: 'pull',
  gave_back: 'pull',
  too_fast: 'pull',
  too_slow: 'pull',
  jerk: 'pull',
  ran_on: 'pull',
  drifted: null,
  reel: null,
  too_far: 'pull',
  too_short: 'pull',
  no_hops: 'snap',
  slack_hops: null,
  few_hops: null,
  many_hops: null,
  low_hops: 'snap',
  tiny_hops: 'snap',
  high_hops: 'snap'
};

/** What cost most is the one thing to change: the call, or the move; the call, which is easier changed, of two alike. */
export function isCallTheFix({ call, goals }: Pick<Grade, 'call' | 'goals'>): boolean {
  return call !== null && call.lost > 0 && call.lost >= TOTAL_MARKS - moveMarks({ goals });
}

/** Their own advice says what to wait for, or to do, with a rod that was held. */
const HAVE_ADVICE_OF_REST = ['bottom_first', 'freed'];
/** So does what is to be reeled up before the rod is moved. */
const isReeledFirst = ({ goals }: Pick<Challenge, 'goals'>): boolean =>
  goals.some((goal) => goal.kind === 'reeled' && goal.given_by === 'boat');

/** Nothing is to be moved before something bites. */
const isOnlyForBite = ({ goals }: Pick<Challenge, 'goals'>): boolean =>
  goals.some(({ kind }) => kind === 'strike') && goals.every(({ kind }) => kind !== 'drag_first');

/** Nothing was done where a move was asked: that comes before any finer advice. */
function neverMoved({ goals, setup }: Challenge, { result, grade }: GradedRun): boolean {
  if (moveMarks(grade) === TOTAL_MARKS || !isStill(result)) return false;
  if (isReeledFirst({ goals }) || isOnlyForBite({ goals })) return false;
  if (goals.some(({ kind }) => HAVE_ADVICE_OF_REST.includes(kind))) return false;
  return (setup.drift_m_s ?? 0) !== 0 || Math.abs(travelBeforeBite(result)) < NO_MOVE_M;
}

/** Where the next try has another bottom, what this one asked for and no figures of the hand. */
function rightPlace({ look_alikes, setup, goals }: Challenge, units: Units): string | null {
  const ground = look_alikes && setup.bottom?.ground?.kind;
  const goal = travelGoalOf({ goals });
  return ground && goal ? `On ${ground}, stop at ${formatLength(goal.target_m, units)}.` : null;
}

function oneTurn(
  fault: Fault,
  challenge: Challenge,
  { result, grade }: GradedRun,
  units: Units,
  correction?: Correction | null
): Advice {
  // A hair outside costs a mark and no advice, and is told as that.
  if (fault === 'none' && !isAsAsked(grade))
    return { ...fix('Hardly anything to change.'), aim: '' };
  // Who was only slow is told the time, and not that way as if it were another.
  const isNew = fault === 'too_slow' || (correction && !isSameTurn(result, correction));
  const isNamed = fault !== 'none' && correction && isNew;
  const named = isNamed ? inButtonTime(challenge, correction) : null;
  const words = changeSentence(fault, challenge.plane, result, units, named);
  const asSaid = named && atOwnPace(fault, result, named);
  return {
    words,
    move: asSaid && (advisedMove(challenge, asSaid)?.move ?? null),
    aim: asSaid ? aimSentence(fault, result, asSaid, asSaid !== named, units) : words
  };
}

/** One step of the challenge's own move, for who did another one: a fix is one thing to change. */
function nextStep(
  challenge: Challenge,
  { result }: GradedRun,
  units: Units,
  part: StepPart,
  isLate: boolean
): { words: string; move: Move; count: number } | null {
  const advised = advisedMove(challenge);
  const step = advised && stepAt(advised.steps, part);
  // How long it waited before it stirred is no part of a move that was made alike.
  const isOfWait = step?.kind === 'rest' && step.isSpare;
  if (!step || (!isOfWait && isSameSteps(challenge.setup, result, advised.move))) return null;
  // Who was late hears no spare seconds.
  const said = isOfWait && isLate ? { ...step, isSpare: false } : step;
  const steps = [said, ...reeledAfter(advised.steps, step, part)];
  // It stands over the next try as well, which begins with the pull.
  const isAfterPull = part === 'back' && advised.steps.indexOf(step) > 0;
  const words = stepWords(challenge.plane, steps, units, isAfterPull);
  return { words, move: advised.move, count: steps.length };
}

/** The rod is given back for what the reel then takes up: who is told the one alone has still to be told the other. */
function reeledAfter(steps: readonly SpokenStep[], step: SpokenStep, part: StepPart): SpokenStep[] {
  const next = steps[steps.indexOf(step) + 1];
  return part === 'back' && next?.kind === 'reel' ? [next] : [];
}

function stepAt(steps: readonly SpokenStep[], part: StepPart): SpokenStep | undefined {
  const isPull = (step: SpokenStep) => 'isAway' in step && step.isAway;
  switch (part) {
    case 'pull':
      return steps.find(isPull);
    case 'snap':
      return steps.filter(isPull).sort((a, b) => a.time_s - b.time_s)[0];
    case 'back':
      return steps.find((step) => 'isAway' in step && !step.isAway);
    default:
      return steps.find(({ kind }) => kind === part);
  }
}

/** The goal with advice of its own that cost most: by what it missed itself, not by what was left undone. */
function goalToFix(challenge: Challenge, { result, grade }: GradedRun): GoalGrade | null {
  const task = advisedTask(challenge);
  const [most] = grade.goals
    .filter((one) => isReadFromHand(one.goal) || adviceOf(one, result, task) !== null)
    .sort((a, b) => marksLost(b) - marksLost(a));
  const worst = lateSet(most, grade) ?? most;
  // What the boat gives is there before the rod is moved.
  const first = grade.goals.find(({ goal }) => goal.kind === 'reeled' && goal.given_by === 'boat');
  if (first && marksLost(first) > 0) return first;
  if (worst?.goal.kind === 'reeled' && isPullAmiss(grade)) return null;
  return worst && marksLost(worst) > 0 && adviceOf(worst, result, task) !== null ? worst : null;
}

/** Who dragged, if not far enough, and then set too late or never, has lost the fish by that. */
function lateSet(worst: GoalGrade | undefined, { goals }: Grade): GoalGrade | undefined {
  if (worst?.goal.kind !== 'drag_first' || worst.value < NO_MOVE_M) return undefined;
  return goals.find(({ goal, met, value }) => goal.kind === 'strike' && met < 1 && value > 0);
}

/** Who went too fast, and too far or not far enough, is told both: slower alone is half of it. */
function leadWords(challenge: Challenge, lead: GoalGrade, { result, grade }: GradedRun): string {
  const own = adviceOf(lead, result, advisedTask(challenge));
  const isQuick = lead.goal.kind === 'pace' && lead.value > lead.goal.m_s[1];
  if (!isQuick) return `${own}.`;
  const isBurst = hasBurst(lead, result);
  const missed = grade.goals.find(({ goal, met }) => goal.kind === 'travel' && met < 1);
  if (missed?.goal.kind === 'travel') {
    const way = missed.value > missed.goal.target_m ? 'Move less' : 'Go farther';
    return `${way}, and ${isBurst ? 'more evenly' : 'slower'}.`;
  }
  return isBurst ? 'Pull more evenly: one spot was too quick.' : `${own}.`;
}

/** Whether the tip was in the asked pace on the whole, and the jig too quick at one spot. */
function hasBurst({ goal }: GoalGrade, result: Result): boolean {
  if (goal.kind !== 'pace') return false;
  const { duration_s } = tipMotionOf(result);
  return tipTravel(result) <= goal.m_s[1] * duration_s;
}

/** The reel takes up what the rod's pull has left: who made another pull is told of that first. */
function isPullAmiss({ goals }: Grade): boolean {
  return goals.some(({ goal, met }) => goal.kind === 'travel' && met < 1);
}
