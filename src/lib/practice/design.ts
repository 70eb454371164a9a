/**
 * Every number of the practice schedule that is a design proposal, in one place; how many tries a
 * phase has stands with the drills, in course/phases.ts. Those that rest on
 * published work name it; the rest is this project's own choice and may be changed here alone.
 */

import { TASKS_IN_TURN } from '../course/phases';
import type { GuessQuantity, Phase } from '../scoring';

export { PHASES, TRIES } from '../course/phases';
export type { Phase } from '../scoring';

/**
 * Of the hidden tries of the half seen phase every one in so many is told (about half: Winstein &
 * Schmidt 1990). Those in sight tell by themselves.
 */
export const TOLD_ONE_IN = 2;

/**
 * So many good tries in a row end a part before its number of tries is up: what goes well over and over
 * teaches nothing more. Of the part that takes tasks in turn, each task once. Out of sight all are made:
 * the ruler counts on them.
 */
export const ENDED_BY_GOOD: Partial<Record<Phase, number>> = {
  seen: 3,
  half_seen: TASKS_IN_TURN.serial
};

/** How far off a good try may be, in the unit of the drill's criterion: its own band, see drills/drag.ts. */
export const GOOD_WITHIN: Record<GuessQuantity, number> = { travel: 0.15, height: 1, down: 1 };

/**
 * Unseen tries are told only outside this part of the target (15 %: Cruz 2018), and outside the
 * second from the try on whose number is given: the hand is better by then.
 */
export const TOLD_OUTSIDE = { first: 0.15, later: 0.1, fromTry: 8 };

const HOUR_MS = 3_600_000;

/** Least time without practice before each check, ms: retention shows only after sleep. */
export const CHECK_AFTER_MS = [24 * HOUR_MS, 7 * 24 * HOUR_MS] as const;

/** The most bias (CE) and spread (VE) of a check, and the least share of its tries that were right. */
export interface Criterion {
  bias: number;
  spread: number;
  right: number;
}

/**
 * What a check must reach. Bias and spread of a distance are shares of the target; right is the pace
 * asked. Where a band is asked, a hop's height or the wait after the touch, they are in half widths of
 * that band from its middle, and right is a try that passed: on average inside, and even enough that
 * nine in ten of a steady hand's tries are inside (1 / 0.6 standard deviations each way).
 */
export const MASTERED: Record<GuessQuantity, Criterion> = {
  travel: { bias: 0.1, spread: 0.15, right: 0.8 },
  height: { bias: 1, spread: 0.6, right: 0.8 },
  down: { bias: 1, spread: 0.6, right: 0.8 }
};

/**
 * The ruler is of the hand as it is now: its last tries, no more. Fewer would not settle an uneven
 * hand, more would hold against it what it has unlearnt.
 */
export const RULER_TRIES = 40;
/** Fewer tries give no figure: the scale itself would be a guess. */
export const RULER_LEAST = 4;
/** The ruler is settled when the bias is known to this part of the distance meant. */
export const SETTLED_WITHIN = 0.1;
/** Confidence of every band of the ruler. */
export const CONFIDENCE = 0.9;

/** About how long a question takes with what is said to its answer, minutes. */
export const QUESTION_MINUTES = 0.6;

/** About how long a try takes with what is read after it, minutes. */
export const TRY_MINUTES = 0.6;

/**
 * Hidden tries of a skill between its lesson and the next one: enough to show the hand that it does
 * not know yet, and few enough that the next lesson is reached the same day. More is in Practice.
 */
export const SHORT_DRILL_TRIES = 6;
