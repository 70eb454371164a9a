import { seededRandom, type Random } from '../src/lib/model';
import { rulerOf } from '../src/lib/practice/ruler';
import { RULER_LEAST } from '../src/lib/practice/design';
import type { Mark } from '../src/lib/practice/mark';
import type { Metrics } from './metric';

const SEEDS = 500;
const TRIES = 10;
/** Points of bias: how near the fit has to come to the hand's own. */
const NEAR = 0.1;
type Range = readonly [low: number, high: number];
const BIAS: Range = [-0.4, 1.2];
const NOISE: Range = [0.05, 0.3];
const DISTANCES_M = [0.3048, 0.6096, 0.9144];

/** How a hand's noise scales: with what it means (VE as part of the target), or with what it does. */
type NoiseOf = 'meant' | 'done';

interface Hand {
  bias: number;
  noise: number;
  noiseOf: NoiseOf;
}

/** What the fit makes of one simulated hand, in parts of the distance meant. */
interface Fitted {
  error: number;
  /** Error of the plain mean: no fit can be nearer on average to a hand whose noise is normal. */
  plainError: number;
  isInBand: boolean;
}

/**
 * Simulated hands of known bias −40 … +120 % and noise 5 … 30 %. The target is that of ten tries; at
 * a noise of 30 % ten tries leave a standard error of 9.5 points, so it lies at the edge of what any
 * fit can reach: the plain mean, the best there is for such hands, is shown beside it.
 */
export function rulerMetrics(): Metrics {
  const fits = fitted(TRIES, NOISE, 'meant');
  return {
    'ruler: bias within 10 points': near(fits, 0.9),
    'ruler: by the plain mean': near(
      fits.map(({ plainError }) => ({ error: plainError })),
      null
    ),
    'ruler: after 14 tries': near(fitted(14, NOISE, 'meant'), null),
    'ruler: at noise 30 %': near(fitted(TRIES, [NOISE[1], NOISE[1]], 'meant'), null),
    'ruler: noise as part of reach': near(fitted(TRIES, NOISE, 'done'), null),
    'ruler: truth in its 90 % band': {
      value: fits.filter(({ isInBand }) => isInBand).length / SEEDS,
      unit: `share of ${SEEDS} seeds`,
      target: { atLeast: 0.85 }
    }
  };
}

function near(fits: readonly { error: number }[], atLeast: number | null): Metrics[string] {
  return {
    value: fits.filter(({ error }) => Math.abs(error) <= NEAR).length / SEEDS,
    unit: `share of ${SEEDS} seeds`,
    target: atLeast === null ? null : { atLeast }
  };
}

function fitted(tries: number, noise: Range, noiseOf: NoiseOf): Fitted[] {
  return Array.from({ length: SEEDS }, (_, seed) => {
    const random = seededRandom(seed);
    const hand = { bias: between(random, BIAS), noise: between(random, noise), noiseOf };
    const marks = Array.from({ length: tries }, (_, i) => simulated(random, i, hand));
    const ruler = rulerOf(marks);
    if (!ruler) throw new Error(`a ruler needs ${RULER_LEAST} tries, had ${tries}`);
    const error = ruler.bait.value - (1 + hand.bias);
    const plainError = ruler.scores.constant - hand.bias;
    return { error, plainError, isInBand: Math.abs(error) <= ruler.bait.band };
  });
}

function simulated(random: Random, i: number, { bias, noise, noiseOf }: Hand): Mark {
  const meant_m = DISTANCES_M[i % DISTANCES_M.length];
  const sd = noiseOf === 'meant' ? noise : noise * (1 + bias);
  const bait_m = meant_m * (1 + bias + sd * normal(random));
  const at = `2030-05-01T08:${String(i).padStart(2, '0')}:00.000Z`;
  const rest = { tip_m: bait_m, lift_m: 0, speed_m_s: 0.2, isPaceRight: true };
  return { id: `${i}`, challenge: 'drag', at, meant_m, bait_m, ...rest };
}

function between(random: Random, [low, high]: Range): number {
  return low + (high - low) * random();
}

/** Box–Muller. */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
