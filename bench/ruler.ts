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
/** Tries of the hands whose truth is looked for in the band: a few, a drill's worth, a full ruler. */
const COVERED_TRIES = [10, 20, 40] as const;
const COVERAGE = { atLeast: 0.85 };
/** What a drifting hand moves by from try to try, at most, and where a learning one began and how soon it forgets that, tries. */
const MOST_DRIFT = 0.03;
const LEARNT: Range = [0.4, 1.4];
const LEARNT_IN: Range = [4, 16];
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
}

/**
 * Simulated hands of known bias −40 … +120 % and noise 5 … 30 %. For a hand that is known to stand nothing is
 * nearer than the mean, which ten tries bring within ten points in 0.901 of hands; an ideal observer who has to
 * reckon with hands that drift and learn does so in 0.827, and that is what the ruler has to reach
 * (docs/decisions/2026-11-28-what-ten-tries-can-tell.md).
 */
const IDEAL_SHARE = 0.827;

export function rulerMetrics(): Metrics {
  const fits = fitted(TRIES, NOISE, 'meant');
  return {
    'ruler: bias within 10 points': near(fits, IDEAL_SHARE),
    'ruler: by the plain mean': near(
      fits.map(({ plainError }) => ({ error: plainError })),
      null
    ),
    'ruler: after 14 tries': near(fitted(14, NOISE, 'meant'), null),
    'ruler: at noise 30 %': near(fitted(TRIES, [NOISE[1], NOISE[1]], 'meant'), null),
    'ruler: noise as part of reach': near(fitted(TRIES, NOISE, 'done'), null),
    ...coverage()
  };
}

/** How far a hand is from its last level, tries before the last, in parts of the distance meant. */
type Course = (i: number, last: number) => number;

const COURSES: Record<string, (random: Random) => Course> = {
  steady: () => () => 0,
  drifting: (random) => {
    const drift = between(random, [-MOST_DRIFT, MOST_DRIFT]);
    return (i, last) => drift * (i - last);
  },
  learning: (random) => {
    const [first, tries] = [between(random, LEARNT), between(random, LEARNT_IN)];
    return (i, last) => first * (Math.exp(-i / tries) - Math.exp(-last / tries));
  }
};

/** Share of hands whose bias at the last try lies in the stated 90 % band. */
function coverage(): Metrics {
  const cases = Object.entries(COURSES).flatMap(([name, course]) =>
    COVERED_TRIES.map((tries) => {
      const inside = Array.from({ length: SEEDS }, (_, seed) => isCovered(course, tries, seed));
      return [
        `ruler: truth of a ${name} hand in its 90 % band, ${tries} tries`,
        {
          value: inside.filter(Boolean).length / SEEDS,
          unit: `share of ${SEEDS} seeds`,
          target: COVERAGE
        }
      ];
    })
  );
  return Object.fromEntries(cases) as Metrics;
}

function isCovered(course: (random: Random) => Course, tries: number, seed: number): boolean {
  const random = seededRandom(seed);
  const away = course(random);
  const [bias, noise] = [between(random, BIAS), between(random, NOISE)];
  const marks = Array.from({ length: tries }, (_, i) =>
    simulated(random, i, { bias: bias + away(i, tries - 1), noise, noiseOf: 'meant' })
  );
  const bait = rulerOf(marks)?.bait;
  return bait !== undefined && Math.abs(bait.value - 1 - bias) <= bait.band;
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
    return { error, plainError };
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
