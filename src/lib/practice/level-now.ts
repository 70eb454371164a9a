import { CONFIDENCE } from './design';
import { median } from './robust-mean';
import { studentShareBelow } from './student';

/** Where a row of values stands now, though it may have drifted on the way. */
export interface LevelNow {
  /** In the unit of the values. */
  value: number;
  /** Half width of its band at CONFIDENCE. */
  band: number;
  /** Standard deviation of one value about the level. */
  sd: number;
  count: number;
  /** Whether the row itself speaks for a level that moves, by steps or along a slope. */
  isMoving: boolean;
}

/**
 * How much a level may move from one try to the next, in standard deviations of one try: by chance, and
 * along a slope. Larger ones follow faster and leave wider bands; smaller ones cannot be told from a hand that
 * stands, and widen its band for nothing.
 */
const STEPS = [0, 0.25, 0.9];
const SLOPES = [0, 0.07, 0.21];
const HYPOTHESES = STEPS.flatMap((step) => SLOPES.map((slope) => ({ step, slope })));

/**
 * How likely it is beforehand that a hand that practises moves, over that it stands; each pair above as
 * likely as the other. Larger holds the truth more often for hands that learn, at wider bands for all.
 */
const MOVING_ODDS = 1.4;

/**
 * Values further than so many deviations from the median of their neighbours count as if they lay
 * there: one wild try is no drift.
 */
const HELD_AT = 3;
const NEIGHBOURS = 2;
/** Median distance from the median of a normal distribution, in standard deviations. */
const MAD_OF_SD = 0.6744898;

/**
 * A local level with a slope (Harvey 1989, Forecasting, structural time series models and the Kalman
 * filter, 2.3), filtered to the last value under each hypothesis and averaged by how well each foretold
 * the row (Hoeting et al. 1999). Recent values weigh the more, the more the level seems to move. What is
 * known of the level is the average, by weight, of a Student's t for each hypothesis: `value` is the middle of
 * the window that reaches `near` to each side and holds most of it, the band holds CONFIDENCE of it about
 * that. Throws RangeError for fewer than two values.
 * @param near in the unit of the values
 */
export function levelNow(values: readonly number[], near: number): LevelNow {
  const count = values.length;
  if (count < 2) throw new RangeError(`values must be two or more, got ${count}`);
  const row = heldBack(values);
  const filtered = HYPOTHESES.map(({ step, slope }) => filter(row, step, slope));
  const best = Math.max(...filtered.map(({ likelihood }) => likelihood));
  const weights = filtered.map(({ likelihood }, i) => {
    const odds = i === 0 ? 1 : MOVING_ODDS / (HYPOTHESES.length - 1);
    return odds * Math.exp(likelihood - best);
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const average = (of: (one: Filtered) => number) =>
    filtered.reduce((sum, one, i) => sum + weights[i] * of(one), 0) / total;
  const shareBelow = (x: number) =>
    average(({ level, variance, perTry }) => {
      const scale = Math.sqrt(variance * perTry);
      return scale === 0 ? Number(level <= x) : studentShareBelow((x - level) / scale, count - 1);
    });
  const shareWithin = (middle: number, reach: number) =>
    shareBelow(middle + reach) - shareBelow(middle - reach);
  const value = likeliest(
    average(({ level }) => level),
    filtered.map(({ level }) => level),
    (middle) => shareWithin(middle, near)
  );
  return {
    value,
    band: bandThatHolds(CONFIDENCE, (band) => shareWithin(value, band)),
    sd: Math.sqrt(average(({ perTry }) => perTry)),
    count,
    isMoving: total - weights[0] > MOVING_ODDS * weights[0]
  };
}

/** Places tried for the level, from the least to the most that a hypothesis says. */
const PLACES = 60;
/** A place must hold this much more to be taken for the level: of a quiet hand many places hold all there is. */
const CLEARLY_MORE = 1e-6;

/** The place that has most by `shareAt`, from the least to the most of `levels`; `usual` where none has clearly more. */
function likeliest(
  usual: number,
  levels: readonly number[],
  shareAt: (place: number) => number
): number {
  const [least, most] = [Math.min(...levels), Math.max(...levels)];
  // An average of equal levels is rounded past them, and would lie outside of what was asked.
  let place = Math.min(most, Math.max(least, usual));
  let share = shareAt(place) + CLEARLY_MORE;
  for (let i = 0; i <= PLACES; i++) {
    const tried = least + ((most - least) * i) / PLACES;
    const there = shareAt(tried);
    if (there > share) [place, share] = [tried, there];
  }
  return place;
}

/** Halvings that find a band to 1e-12 of the first guess. */
const HALVINGS = 40;

/** Half width within which `share` lies, from how much lies within one. */
function bandThatHolds(share: number, within: (band: number) => number): number {
  if (within(0) >= share) return 0;
  let [low, high] = [0, 1];
  while (within(high) < share) high *= 2;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (within(middle) < share) low = middle;
    else high = middle;
  }
  return high;
}

interface Filtered {
  level: number;
  /** Of the level, over that of one try. */
  variance: number;
  /** Variance of one try about the level. */
  perTry: number;
  /** Logarithm, but for what all hypotheses share. */
  likelihood: number;
}

/** Kalman's filter of level and slope, variances in units of one try's; the first value sets the level. */
function filter(row: readonly number[], step: number, slope: number): Filtered {
  let [level, drift] = [row[0], 0];
  let [pLevel, pBoth, pDrift] = [1, 0, slope * slope];
  let [squares, logs] = [0, 0];
  for (const value of row.slice(1)) {
    level += drift;
    pLevel += 2 * pBoth + pDrift + step * step;
    pBoth += pDrift;
    const spread = pLevel + 1;
    const surprise = value - level;
    squares += surprise ** 2 / spread;
    logs += Math.log(spread);
    const [gain, driftGain] = [pLevel / spread, pBoth / spread];
    level += gain * surprise;
    drift += driftGain * surprise;
    pDrift -= driftGain * pBoth;
    pBoth -= gain * pBoth;
    pLevel -= gain * pLevel;
  }
  const free = row.length - 1;
  const likelihood = -0.5 * (logs + free * Math.log(Math.max(squares, Number.MIN_VALUE)));
  return { level, variance: pLevel, perTry: squares / free, likelihood };
}

function heldBack(values: readonly number[]): number[] {
  const middles = values.map((_, i) =>
    median(values.slice(Math.max(0, i - NEIGHBOURS), i + NEIGHBOURS + 1))
  );
  const scale = median(values.map((x, i) => Math.abs(x - middles[i]))) / MAD_OF_SD;
  // Half of the row alike says nothing of the spread of the rest.
  if (scale === 0) return [...values];
  const reach = HELD_AT * scale;
  return values.map((x, i) => Math.min(middles[i] + reach, Math.max(middles[i] - reach, x)));
}
