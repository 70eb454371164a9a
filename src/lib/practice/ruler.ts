import { isOffBottom } from '../scoring';
import { CONFIDENCE, RULER_LEAST, RULER_TRIES, SETTLED_WITHIN } from './design';
import { errorScores, type ErrorScores } from './error-scores';
import { errorOf, type Mark } from './mark';
import { levelNow, type LevelNow } from './level-now';
import { halfWidthOf, robustMean, type RobustMean } from './robust-mean';
import { studentQuantile } from './student';

/** A learner's hand as a ruler: how far the bait goes for what the hand means. */
export interface Ruler {
  /** The tries it rests on, oldest first: the last ones of the hand. */
  marks: readonly Mark[];
  /** Bait distance over distance meant, as it stands after the last try: 1.8 is 80 % too far. */
  bait: LevelNow;
  /** The same of the tip: what the hand alone does. */
  tip: LevelNow;
  /** Errors as parts of the distance meant. */
  scores: ErrorScores;
  /** Share of the tries that left the bottom. */
  leftBottom: number;
  /** Of the tries that were guessed before they were shown: errors of the guess, in the same parts. */
  guess: ErrorScores | null;
  /** Its bias is known, and stands. */
  isSettled: boolean;
  /** About how many more tries would settle it at this spread; null when no ruler's worth would, or it moves. */
  moreTries: number | null;
}

export interface Trend {
  before: RobustMean;
  now: RobustMean;
  /** Which way the size of the bias went; 'unclear' while the bands leave room for both. */
  direction: 'shrinking' | 'growing' | 'unclear';
}

/**
 * The hand's ruler from its last tries, or null when there are too few. The hand is taken to miss by
 * the same part at each distance, which holds near the distances tried and not far beyond.
 */
export function rulerOf(all: readonly Mark[]): Ruler | null {
  const marks = inOrder(all).slice(-RULER_TRIES);
  if (marks.length < RULER_LEAST) return null;
  const bait = levelNow(ratiosOf(marks, ({ bait_m }) => bait_m));
  const isSettled = bait.band <= SETTLED_WITHIN && !bait.isMoving;
  return {
    marks,
    bait,
    tip: levelNow(ratiosOf(marks, ({ tip_m }) => tip_m)),
    scores: errorScores(marks.map(errorOf)),
    leftBottom: marks.filter(({ lift_m }) => isOffBottom(lift_m)).length / marks.length,
    guess: guessScores(marks),
    isSettled,
    moreTries: isSettled ? 0 : bait.isMoving ? null : moreTries(bait.sd, marks.length)
  };
}

/** What to have in mind, m, so that the bait goes `wanted_m`; null for a hand that moves it nowhere. */
export function aimFor(
  { bait }: { bait: Pick<LevelNow, 'value' | 'band'> },
  wanted_m: number
): number | null {
  return bait.value > bait.band ? wanted_m / bait.value : null;
}

/**
 * How far the tip goes astray from try to try, as a part of its way: nine tries in ten (CONFIDENCE) lie
 * inside. The few tries that the spread was read off widen it, by Student's t.
 */
export function handSpread({
  tip
}: {
  tip: Pick<LevelNow, 'value' | 'sd' | 'count'>;
}): number | null {
  if (tip.value <= 0) return null;
  return (studentQuantile((1 + CONFIDENCE) / 2, tip.count - 1) * tip.sd) / tip.value;
}

/** Half of the hand's tries against the other half, at most as many each as the ruler rests on. */
export function trendOf(all: readonly Mark[]): Trend | null {
  const marks = inOrder(all);
  const half = Math.min(RULER_TRIES, Math.floor(marks.length / 2));
  if (half < RULER_LEAST) return null;
  const [before, now] = [marks.slice(0, half), marks.slice(-half)].map((some) =>
    robustMean(ratiosOf(some, ({ bait_m }) => bait_m))
  );
  const change = Math.abs(now.value - 1) - Math.abs(before.value - 1);
  const isClear = Math.abs(change) > Math.hypot(before.band, now.band);
  return { before, now, direction: !isClear ? 'unclear' : change < 0 ? 'shrinking' : 'growing' };
}

function moreTries(sd: number, made: number): number | null {
  for (let count = made + 1; count <= RULER_TRIES; count++) {
    if (halfWidthOf(sd, count) <= SETTLED_WITHIN) return count - made;
  }
  return null;
}

function ratiosOf(marks: readonly Mark[], of: (mark: Mark) => number): number[] {
  return marks.map((mark) => of(mark) / mark.meant_m);
}

function guessScores(marks: readonly Mark[]): ErrorScores | null {
  const errors = marks.flatMap(({ guess_m, bait_m, meant_m }) =>
    guess_m === undefined ? [] : [(guess_m - bait_m) / meant_m]
  );
  return errors.length > 0 ? errorScores(errors) : null;
}

function inOrder(marks: readonly Mark[]): Mark[] {
  return [...marks].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}
