import type { Move } from '../model';
import {
  adviceFor,
  gradeTry,
  type Advice,
  type Challenge,
  type Correction,
  type GradedRun
} from '../scoring';
import { byHand, type HandError } from './hand';
import { endsUnacted, onScreen } from './screen-try';
import { missFaults, resultFaults } from './result-faults';

/** So often is a hand told what to change before it must have passed. */
const ROUNDS = 2;
const MISSES = 5;
/** A fix is one thing to change: what, and how far or how long. */
const MOST_ORDERS = 2;

/**
 * Ways to miss, the most typical first: too short, too far, too quick, too slow, a short jerk; then
 * worse of each, for where one of these does no harm.
 */
const HANDS: readonly HandError[] = [
  { reach: -0.4, pace: 0, isEven: false },
  { reach: 0.6, pace: 0, isEven: false },
  { reach: 0, pace: 1.5, isEven: false },
  { reach: 0, pace: -0.6, isEven: true },
  { reach: -0.5, pace: 3, isEven: true },
  { reach: -0.8, pace: 0, isEven: false },
  { reach: 0.2, pace: 4, isEven: false },
  { reach: -0.7, pace: -0.5, isEven: true }
];

export interface Followed {
  /** Best marks of each miss once its advice was followed, of `ROUNDS` rounds at most. */
  advised: number[];
  faults: string[];
}

/** Five misses of a challenge, those that fail before those that pass, and what comes of their advice. */
export function followAdvice(challenge: Challenge, correction: Correction | null): Followed {
  const faults: string[] = [];
  const known = new Map<string, GradedRun>();
  const follow = (move: Move, words: string) => {
    const key = JSON.stringify(move);
    const made = known.get(key) ?? onScreen(challenge, move);
    if (!known.has(key) && endsUnacted(challenge, move))
      faults.push(`"${words}" cannot be followed: the try ends by itself before it is done`);
    known.set(key, made);
    return made;
  };
  const misses = missesOf(challenge, (move) => gradeTry(challenge, move));
  faults.push(
    ...misses.flatMap((one) => resultFaults(challenge, one)),
    ...missFaults(challenge, misses)
  );
  const advised = misses.map((miss) => {
    let made = miss;
    for (let round = 0; round < ROUNDS && !(round > 0 && made.grade.passed); round++) {
      const advice = adviceFor(challenge, made, 'imperial', correction);
      if (ordersIn(advice.words) > MOST_ORDERS)
        faults.push(`"${advice.words}" is more than one thing to change`);
      const move = followed(challenge, advice);
      if (move === null) break;
      const next = follow(move, advice.words);
      if (!made.grade.passed && isSameRun(made, next))
        faults.push(`"${advice.words}" names the move that just failed`);
      made = next;
    }
    return made.grade.marks;
  });
  return { advised, faults };
}

function ordersIn(words: string): number {
  return words.split(/\. |, then /).length;
}

/** To the letter where a move is named; where only the moment is, as the reference meets it. Null for no change. */
function followed(challenge: Challenge, { words, move }: Advice): Move | null {
  if (move) return move;
  return /^(Hardly anything to change\.)?$/.test(words) ? null : challenge.reference;
}

function missesOf(challenge: Challenge, run: (move: Move) => GradedRun): GradedRun[] {
  const hands = HANDS.map((error) => run(byHand(challenge.reference, challenge.start, error)));
  const [failed, passed] = [false, true].map((is) =>
    hands.filter((one) => one.grade.passed === is)
  );
  return [...failed, run(challenge.beginner), ...passed].slice(0, MISSES);
}

/** The same figures of tip and bait all the way: the same move. */
function isSameRun(a: GradedRun, b: GradedRun): boolean {
  return JSON.stringify(a.result.trace) === JSON.stringify(b.result.trace);
}
