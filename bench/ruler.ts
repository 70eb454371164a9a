import { seededRandom, type Random } from '../src/lib/model';
import { RULER_LEAST } from '../src/lib/practice/design';
import { rulerOf } from '../src/lib/practice/ruler';
import {
  allCourses,
  between,
  BIAS,
  COURSES,
  NOISE,
  simulated,
  steadyHand,
  type Course,
  type NoiseOf,
  type Range
} from './hands';
import { idealLevel } from './ideal-observer';
import type { Metrics } from './metric';

const SEEDS = 500;
const TRIES = 10;
/** Points of bias: how near the fit has to come to the hand's own. */
const NEAR = 0.1;
/** Tries of the hands whose truth is looked for in the band: a few, a drill's worth, a full ruler. */
const COVERED_TRIES = [10, 20, 40] as const;
const COVERAGE = { atLeast: 0.85 };

/** What the fit makes of one simulated hand, in parts of the distance meant. */
interface Fitted {
  error: number;
  /** Error of the plain mean: no fit can be nearer on average to a hand whose noise is normal. */
  plainError: number;
}

/**
 * Simulated hands of known bias −40 … +120 % and noise 5 … 30 %. For a hand that is known to stand nothing is
 * nearer than the mean; an observer who has to reckon with hands that drift and learn holds 0.859 of 3,000 of them,
 * and as near as that one the ruler has to come (docs/decisions/2026-11-28-what-ten-tries-can-tell.md).
 */
const IDEAL_SHARE = 0.859;

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

/** How near the ideal observer comes to the same hands. */
export function idealMetrics(): Metrics {
  return { 'ruler: by an ideal observer': near(idealErrors(TRIES), null) };
}

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
    const { hand, marks } = steadyHand(seed, tries, noise, noiseOf);
    const ruler = rulerOf(marks);
    if (!ruler) throw new Error(`a ruler needs ${RULER_LEAST} tries, had ${tries}`);
    const error = ruler.bait.value - (1 + hand.bias);
    const plainError = ruler.scores.constant - hand.bias;
    return { error, plainError };
  });
}

/** Of the same hands, which the observer does not know to stand: kinds are as frequent as each other. */
function idealErrors(tries: number): { error: number }[] {
  const hands = { bias: BIAS, noise: NOISE, kinds: allCourses() };
  return Array.from({ length: SEEDS }, (_, seed) => {
    const { hand, marks } = steadyHand(seed, tries, NOISE, 'meant');
    const ratios = marks.map(({ bait_m, meant_m }) => bait_m / meant_m);
    return { error: idealLevel(ratios, hands, NEAR) - (1 + hand.bias) };
  });
}
