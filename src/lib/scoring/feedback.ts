import type { Hop, Result } from '../model';
import { adviceFor } from './advice';
import { askedOf, asksCall } from './guess';
import { WATCH_THE_LINE } from './call-words';
import type { Challenge } from './challenge';
import { SKIPPED_ALONG, skippedWords } from './contact-words';
import { formatLength, formatTenths, formatTime, toldLength, type Units } from './display';
import type { Correction } from './correction';
import { handRun } from './hand-run';
import { isStill } from './fault';
import { didOf, DRAGGED_M, isMain, missOf } from './goals';
import { isAsAsked, marksLost, type GoalGrade, type Grade, type GradedRun } from './grade';
import { slackSentence } from './lost-way';
import { reeledInstead } from './reeled-instead';
import { hasTurnedBack, leftBottomAt, NO_MOVE_M, tipSeconds, tipTravel } from './run-measures';
import { tipMotionOf } from './tip-motion';
import { isRaised, waitAfterTouch } from './goals/tip-measures';
import { besideAsked, besideLimits } from './way-words';

/**
 * Three short sentences: what tip and bait did, whether and where it left the bottom, what to change. Where all
 * came out as asked, the last says nothing, nor does the second that it stayed down.
 */
export interface Feedback {
  did: string;
  why: string;
  change: string;
}

/** Sooner than this nobody tells from the start of the move, s. */
const AT_ONCE_S = 0.1;

/**
 * What a guide would say about a try. Every figure comes from the result, the correction or the
 * challenge's own move; while no correction is known, the last sentence of a single turn has none.
 */
export function describeTry(
  challenge: Challenge,
  graded: GradedRun,
  units: Units,
  correction?: Correction | null
): Feedback {
  const reeled = reeledInstead(challenge, graded, units);
  const about = aboutGoal(graded, units);
  const did = reeled?.did ?? about?.did ?? didSentence(challenge, graded, units);
  const ground = challenge.look_alikes && challenge.setup.bottom?.ground?.kind;
  const was = ground ? `It was ${ground}. ` : '';
  const { result, grade } = graded;
  const travel = grade.goals.find(({ goal }) => goal.kind === 'travel');
  const slack = slackSentence(challenge, result, travel, units);
  const why = `${was}${slack}${whySentence(graded, units, about?.goal)}`.trim();
  const { words: change } = adviceFor(challenge, graded, units, correction);
  // Of a lift, or a wait, that the reel took the place of there is nothing more to tell.
  return { did, why: reeled?.did ? '' : why, change };
}

/**
 * What the last try says to do in the next, short; '' where that was clean. Where its count would answer the
 * call, what to watch: who counts as told has not seen the line go slack; who raised the rod is told no count.
 */
export function aimWords(
  challenge: Challenge,
  graded: GradedRun,
  units: Units,
  correction?: Correction | null
): string {
  const { aim } = adviceFor(challenge, graded, units, correction);
  // The next has another bottom, of which it is the answer.
  if (challenge.look_alikes) return '';
  const isHidden = challenge.visibility !== 'seen';
  const isAnswer = isHidden && asksCall(challenge) && askedOf(challenge) === 'down';
  const isOfWay = isRaised(graded.result) && waitAfterTouch(graded.result) >= 0;
  return aim && isAnswer && !isOfWay ? WATCH_THE_LINE : aim;
}

/** The goal that a try is about, where it is not how far the jig went alone, and its sentence. */
function aboutGoal({ result, grade }: GradedRun, units: Units) {
  const travel = grade.goals.find(({ goal }) => goal.kind === 'travel');
  if (travel && !grade.goals.some(({ goal }) => goal.kind === 'strike')) return null;
  for (const one of grade.goals) {
    const did = didOf(one, units, result);
    if (did === null) continue;
    const rod = travel && `${rodSentence(travel, units)}.${reelSentence(travel, result, units)}`;
    return { did: rod ? `${did} ${rod}` : did, goal: one };
  }
  return null;
}

/** What the rod alone did to the jig, and how that is beside what was asked. */
function rodSentence(travel: GoalGrade, units: Units): string {
  const { value } = travel;
  if (Math.abs(value) < NO_MOVE_M) return 'The rod hardly moved the jig';
  const way = besideLimits(travel, Math.abs(value), units);
  if (value < 0) return `The jig went ${way} away from you`;
  return `The rod moved the jig ${way}${besideAsked(travel, units)}`;
}

/** What of the way that is seen was the reel's, so that the reader's sum comes out; '' of one that drew none. */
function reelSentence({ value }: GoalGrade, { travel_m }: Result, units: Units): string {
  const reeled_m = toldLength(travel_m, units) - toldLength(value, units);
  return reeled_m > 0 ? ` The reel dragged it ${formatLength(reeled_m, units)}.` : '';
}

function didSentence(challenge: Challenge, { result, grade }: GradedRun, units: Units): string {
  const hand = handRun(challenge, result);
  const tip = tipWords(challenge, hand, units);
  const { travel_m } = result;
  if (Math.abs(travel_m) < NO_MOVE_M) {
    if (isStill(hand)) return 'You never moved the rod, and the jig stayed where it was.';
    return `${tip}; the jig stayed where it was.`;
  }
  const asked = grade.goals.find(({ goal }) => goal.kind === 'travel');
  // As the table tells it: less the little that a reel has drawn along.
  const moved_m = asked ? asked.value : travel_m;
  const reeled_m = travel_m - moved_m;
  if (asked && reeled_m > DRAGGED_M) {
    return `${rodSentence(asked, units)}.${reelSentence(asked, result, units)}`;
  }
  const jig = asked
    ? besideLimits(asked, Math.abs(moved_m), units)
    : formatLength(Math.abs(moved_m), units);
  if (travel_m < 0) return `${tip}; the jig went ${jig} away from you.`;
  const beside = asked ? besideAsked(asked, units) : '';
  if (isStill(hand) && hand !== result)
    return `You held still, and the boat moved the jig ${jig}${beside}.`;
  const and = tip.includes(',') ? ', and' : ' and';
  const went = hand === result && hasSwungIn(result, moved_m, units) ? 'swung in ' : '';
  const reel = asked ? reelSentence(asked, result, units) : '';
  return `${tip}${and} the jig ${went}${jig}${beside}${stonesTouched(grade)}.${reel}`;
}

/** On the bottom a jig does not outrun the tip: what came farther, as it is told, flew. */
function hasSwungIn(result: Result, moved_m: number, units: Units): boolean {
  const isFarther = toldLength(moved_m, units) > toldLength(tipTravel(result), units);
  return isFarther && result.hops.length > 0;
}

/**
 * The tip's way. Of a sweep that is how far it came from the jig, which is less than the arc that is
 * drawn; of one that turned back, all of it both ways.
 */
function tipWords({ plane, goals }: Challenge, hand: Result, units: Units): string {
  const way_m = tipTravel(hand);
  const { tip_x_m: x, tip_z_m: z } = hand.trace;
  const off_m = Math.hypot(x[x.length - 1] - x[0], z[z.length - 1] - z[0]);
  const way = formatLength(way_m, units);
  const moved = `You moved the tip ${way}`;
  if (hasTurnedBack(off_m, way_m)) return `${moved}, counting both ways`;
  if (plane === 'sweep' && tipMotionOf(hand).taken_m < 0) return `${moved} toward the jig`;
  // Where seconds were asked, who took others is told them, right as the pace may be.
  const isTimed = goals.some(({ kind }) => kind === 'pace') && !isStill(hand);
  return isTimed ? `${moved}, in ${formatTime(tipSeconds(hand))}` : moved;
}

function stonesTouched({ goals }: Grade): string {
  const stones = goals.find(({ goal }) => goal.kind === 'stones');
  if (stones?.goal.kind !== 'stones') return '';
  const count = stones.goal.touched.length;
  if (count === 1) return stones.value === 1 ? '; it touched the rock' : '; it missed the rock';
  if (stones.value === count) return `; it touched all ${count} rocks`;
  return `; it touched ${stones.value === 0 ? 'none' : stones.value} of ${count} rocks`;
}

/** What these ask has nothing to do with whether it kept to the bottom, or says it. */
const NOT_OF_CONTACT = new Set<GoalGrade['goal']['kind']>([
  'strike',
  'freed',
  'hops',
  'swim',
  'swing'
]);

function whySentence({ result, grade }: GradedRun, units: Units, about?: GoalGrade): string {
  // Where hops were asked and none was made, that says why, too.
  if (about?.goal.kind === 'hops' && about.value === 0) return '';
  // Moved before it was down, it is not told that it never came down.
  if (about?.goal.kind === 'bottom_first' && !touchOf(result)) return '';
  const isIdle = Math.abs(result.travel_m) < NO_MOVE_M && result.hops.length === 0;
  const also = alsoAsked(result, grade, units, about);
  const others = grade.goals.filter(
    (one) => one !== about && one !== also?.goal && !(one.goal.kind === 'pace' && hasHopped(result))
  );
  const miss = isIdle && !isCast(result) ? '' : worstMiss(others, result, units);
  const second = miss && `${miss[0].toUpperCase()}${miss.slice(1)}.`;
  if (also) return `${also.did} ${second}`.trim();
  if (about && NOT_OF_CONTACT.has(about.goal.kind)) return second;
  const first =
    fallClause(result) ?? (isIdle ? 'The line never pulled it' : contactClause(result, units));
  if (first) return joined(first, miss);
  const hasSkipped = result.lifts.length > 0;
  if (hasSkipped && miss) return joined(SKIPPED_ALONG, miss.replace(/^but /, 'and '));
  if (hasSkipped) return `${skippedWords(units)}.${stillDown(grade)}`;
  return isAsAsked(grade) ? '' : joined(STAYED, miss);
}

/** Whether a skip was good or bad, where staying down was asked. */
function stillDown({ goals }: Grade): string {
  const isKept = goals.some(({ goal, met }) => goal.kind === 'contact' && met === 1);
  return isKept ? ' That’s still on bottom.' : '';
}

/** Clauses that go on are one sentence. */
function joined(first: string, miss: string): string {
  if (/^(but|and) /.test(miss)) return `${first}, ${miss}.`;
  return miss ? `${first}. ${miss[0].toUpperCase()}${miss.slice(1)}.` : `${first}.`;
}

/** What else was to be done, where it has a sentence of its own: it says more than that the jig stayed down. */
function alsoAsked(result: Result, { goals }: Grade, units: Units, about?: GoalGrade) {
  if (goals.some(({ goal, met }) => goal.kind === 'contact' && met < 1)) return null;
  for (const goal of goals) {
    const did = goal === about ? null : didOf(goal, units, result);
    if (did !== null && isMain(goal.goal) && goal.goal.kind !== 'strike') return { did, goal };
  }
  return null;
}

/** A bait that was cast is off the bottom to begin with: its fall is no flight. */
function fallClause(result: Result): string | null {
  if (!isCast(result)) return null;
  const touch = touchOf(result);
  return touch ? `It was down after ${formatTenths(touch.t_s)}` : 'It never came down';
}

function touchOf({ events }: Result): Result['events'][number] | undefined {
  return events.find(({ kind }) => kind === 'bottom');
}

function isCast({ trace }: Result): boolean {
  return trace.contact[0] === 0;
}

const STAYED = 'It stayed on bottom';

/** That it left the bottom says of its pace what there is to say, beside the seconds that the tip took. */
const hasHopped = (result: Result): boolean => leftBottomAt(result) !== null && !isCast(result);

/** Where it left the bottom first, and how high it rose at most; null of one that never hopped. */
function contactClause(result: Result, units: Units): string | null {
  const left_s = leftBottomAt(result);
  if (left_s === null) return null;
  const { t_s, bait_x_m } = result.trace;
  const rose = `and rose ${formatLength(highestOf(result.hops), units)}`;
  const after_s = Math.max(0, left_s - tipMotionOf(result).start_s);
  const way_m = Math.abs(bait_x_m[t_s.indexOf(left_s)] - bait_x_m[0]);
  const place = way_m < NO_MOVE_M ? 'where it lay' : `after ${formatLength(way_m, units)}`;
  // Where it left and when are one fact.
  return `It left the bottom ${after_s < AT_ONCE_S ? 'at once' : place} ${rose}`;
}

/** Of what else was missed, what weighs most: a result speaks once. What was kept is no miss, however little it earned. */
function worstMiss(goals: readonly GoalGrade[], result: Result, units: Units): string {
  return (
    goals
      .filter((one) => marksLost(one) > 0)
      .sort((a, b) => marksLost(b) - marksLost(a))
      .map((one) => missOf(one, units, result))
      .find((clause) => clause !== '') ?? ''
  );
}

function highestOf(hops: readonly Hop[]): number {
  return Math.max(...hops.map(({ height_m }) => height_m));
}
