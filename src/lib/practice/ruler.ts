import { isOffBottom } from '../scoring';
import { CONFIDENCE, RULER_LEAST, RULER_TRIES, SETTLED_WITHIN } from './design';
import { errorScores, type ErrorScores } from './error-scores';
import { errorOf, type Mark } from './mark';
import { levelNow, type LevelNow } from './level-now';
import { halfWidthOf, robustMean, type RobustMean } from './robust-mean';
import { fitLine } from './fitted-line';
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
  /** It misses by another part at short distances than at long ones: `rulerAt` says what holds at one. */
  differsByDistance: boolean;
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

/** Distances within this factor of each other are one distance to `rulerAt`. */
const ONE_DISTANCE = 1.25;
/** And within this one they are the same, in feet here and in centimeters there. */
const SAME_DISTANCE = 1.03;
/** How sure a slope over distance must be before the ruler is taken apart for it. */
const SLOPE_SURE = 0.99;
/** A part that changes by less than this over the distances tried is the same part. */
const SAME_PART = 0.2;

/**
 * The hand's ruler from its last tries, or null when there are too few. The hand is taken to miss by
 * the same part at each distance, unless its own tries speak against that.
 */
export function rulerOf(all: readonly Mark[]): Ruler | null {
  const marks = inOrder(all).slice(-RULER_TRIES);
  if (marks.length < RULER_LEAST) return null;
  const bait = levelNow(
    ratiosOf(marks, ({ bait_m }) => bait_m),
    SETTLED_WITHIN
  );
  const isSettled = bait.band <= SETTLED_WITHIN && !bait.isMoving;
  return {
    marks,
    bait,
    tip: levelNow(
      ratiosOf(marks, ({ tip_m }) => tip_m),
      SETTLED_WITHIN
    ),
    scores: errorScores(marks.map(errorOf)),
    leftBottom: marks.filter(({ lift_m }) => isOffBottom(lift_m)).length / marks.length,
    guess: guessScores(marks),
    differsByDistance: differsByDistance(marks),
    isSettled,
    moreTries: isSettled ? 0 : bait.isMoving ? null : moreTries(bait.sd, marks.length)
  };
}

/**
 * The ruler for one distance: all of it where the hand misses by the same part everywhere, else from
 * the tries near that distance; null where those are too few.
 */
export function rulerAt(ruler: Ruler, meant_m: number): Ruler | null {
  if (!ruler.differsByDistance) return ruler;
  const isNear = (mark: Mark) =>
    Math.abs(Math.log(mark.meant_m / meant_m)) < Math.log(ONE_DISTANCE);
  return rulerOf(ruler.marks.filter(isNear));
}

/** The distances that were meant, m, shortest first; of those that nobody tells apart the one meant most. */
export function meantDistances(marks: readonly Mark[]): number[] {
  const counts = new Map<number, number>();
  for (const { meant_m } of marks) counts.set(meant_m, (counts.get(meant_m) ?? 0) + 1);
  const found: [number, number][] = [];
  for (const one of [...counts].sort(([, a], [, b]) => b - a)) {
    if (found.every(([m]) => Math.abs(Math.log(one[0] / m)) > Math.log(SAME_DISTANCE)))
      found.push(one);
  }
  return found.map(([m]) => m).sort((a, b) => a - b);
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

/** Whether the part by which tries miss goes with the distance meant: a slope that is not 0, by Student's t. */
function differsByDistance(marks: readonly Mark[]): boolean {
  const line = fitLine(
    marks.map(({ meant_m }) => Math.log(meant_m)),
    ratiosOf(marks, ({ bait_m }) => bait_m)
  );
  if (line === null || Math.abs(line.slope) * line.span < SAME_PART) return false;
  return (
    Math.abs(line.slope) > studentQuantile((1 + SLOPE_SURE) / 2, marks.length - 2) * line.slopeError
  );
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
