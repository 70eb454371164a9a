import { seededRandom, type Random } from '../src/lib/model';
import type { Mark } from '../src/lib/practice/mark';

/** Simulated hands, in parts of the distance meant. */

export type Range = readonly [low: number, high: number];
export const BIAS: Range = [-0.4, 1.2];
export const NOISE: Range = [0.05, 0.3];
/** What a drifting hand moves by from try to try, at most, and where a learning one began and how soon it forgets that, tries. */
const MOST_DRIFT = 0.03;
const LEARNT: Range = [0.4, 1.4];
const LEARNT_IN: Range = [4, 16];
const DISTANCES_M = [0.3048, 0.6096, 0.9144];

/** How a hand's noise scales: with what it means (VE as part of the target), or with what it does. */
export type NoiseOf = 'meant' | 'done';

export interface Hand {
  bias: number;
  noise: number;
  noiseOf: NoiseOf;
}

/** How far a hand is from its last level, tries before the last, in parts of the distance meant. */
export type Course = (i: number, last: number) => number;

const drifts =
  (drift: number): Course =>
  (i, last) =>
    drift * (i - last);
const learns =
  (first: number, tries: number): Course =>
  (i, last) =>
    first * (Math.exp(-i / tries) - Math.exp(-last / tries));

export const COURSES: Record<string, (random: Random) => Course> = {
  steady: () => () => 0,
  drifting: (random) => drifts(between(random, [-MOST_DRIFT, MOST_DRIFT])),
  learning: (random) => learns(between(random, LEARNT), between(random, LEARNT_IN))
};

/** The same kinds, each over the whole of its ranges, for whoever knows them. */
export function allCourses(): Course[][] {
  const over = ([low, high]: Range, steps: number) =>
    Array.from({ length: steps }, (_, k) => low + ((high - low) * (k + 0.5)) / steps);
  return [
    [() => 0],
    over([-MOST_DRIFT, MOST_DRIFT], 15).map(drifts),
    over(LEARNT, 10).flatMap((first) => over(LEARNT_IN, 8).map((tries) => learns(first, tries)))
  ];
}

/** The `i`-th try of a hand. */
export function simulated(random: Random, i: number, { bias, noise, noiseOf }: Hand): Mark {
  const meant_m = DISTANCES_M[i % DISTANCES_M.length];
  const sd = noiseOf === 'meant' ? noise : noise * (1 + bias);
  const bait_m = meant_m * (1 + bias + sd * normal(random));
  const at = `2030-05-01T08:${String(i).padStart(2, '0')}:00.000Z`;
  const rest = { tip_m: bait_m, lift_m: 0, speed_m_s: 0.2, isPaceRight: true };
  return { id: `${i}`, challenge: 'drag', at, meant_m, bait_m, ...rest };
}

/** A hand that stands, by its seed, and its tries. */
export function steadyHand(seed: number, tries: number, noise: Range, noiseOf: NoiseOf) {
  const random = seededRandom(seed);
  const hand = { bias: between(random, BIAS), noise: between(random, noise), noiseOf };
  return { hand, marks: Array.from({ length: tries }, (_, i) => simulated(random, i, hand)) };
}

export function between(random: Random, [low, high]: Range): number {
  return low + (high - low) * random();
}

/** Box–Muller. */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
