import type { Random } from '../model';
import { deviationOf, forecastOf, valuesAt, type Forecast } from './forecast';
import type { Problem } from './least-squares';
import { normal } from './normal';
import type { Posterior, Sample } from './posterior';
import type { FitResult, Prediction90, TestFit } from './result';

/** Runs behind the band of a figure that was not measured. */
const DRAWS = 32;
/** Measurements made of each value in a band. */
const NOISE_A_DRAW = 16;
/** With fewer other tests than this nothing is held out. */
const LEAST_OTHERS = 3;

/** What a fit has in hand when it predicts. */
export interface FitFound {
  readonly problem: Problem;
  readonly posterior: Posterior;
  /** What full runs of each test at the values found give more than coarse ones, m. */
  readonly shifts: readonly Forecast[];
  /** The values found, scaled. */
  readonly u: readonly number[];
}

/** Each test at the values found, and over what the tests leave open. */
export function predictions(found: FitFound, random: Random): (Prediction90 | null)[] {
  const { samples } = found.posterior;
  return found.problem.tests.map((_, i) => predicted(found, i, samples, found.u, random));
}

/** The last measured test from the others. */
export function heldOut(found: FitFound, random: Random): FitResult['held_out'] {
  const measured = [...new Set(found.problem.measurements.map(({ test }) => test))];
  const test = measured.at(-1);
  if (test === undefined || measured.length <= LEAST_OTHERS) return null;
  const samples = found.posterior.without(test);
  return {
    test,
    predicted: predicted(found, test, samples, middleOf(samples), random),
    measured: measuredIn(found.problem, test)
  };
}

function predicted(
  found: FitFound,
  i: number,
  samples: readonly Sample[],
  u: readonly number[],
  random: Random
): Prediction90 | null {
  const { problem, shifts, posterior } = found;
  const test = problem.tests[i];
  const run = (at: readonly number[]) =>
    forecastOf(test, valuesAt(problem.unknowns, at, problem.known), shifts[i]);
  const best = run(u);
  if (!best) return null;
  const few = thinned(samples, DRAWS);
  let runs: (Forecast | null)[] | null = null;
  const drawn = (figure: keyof Forecast) => {
    const k = problem.measurements.findIndex((one) => one.test === i && one.figure === figure);
    if (k >= 0) {
      const many = thinned(samples, NOISE_A_DRAW * DRAWS);
      return many.map(({ u, scatter }) => ({ value_m: posterior.saidAt(u)[k], scatter }));
    }
    runs ??= few.map(({ u }) => run(u));
    return few.map(({ scatter }, j) => ({ value_m: (runs?.[j] ?? best)[figure], scatter }));
  };
  const band = (figure: keyof Forecast, said_m: number | undefined) =>
    bandOf(drawn(figure), said_m, random);
  const heights = band('peak_height_m', test.height_sd_m);
  return {
    travel_m: best.travel_m,
    travel_interval90: band('travel_m', test.travel_sd_m),
    peak_height_m: best.peak_height_m,
    height_interval90: [Math.max(0, heights[0]), Math.max(0, heights[1])]
  };
}

/** From the 5th to the 95th of a hundred measurements, each off by a deviation of its own. */
function bandOf(
  drawn: readonly { value_m: number; scatter: number }[],
  said_m: number | undefined,
  random: Random
): [number, number] {
  const measured = drawn
    .flatMap(({ value_m, scatter }) =>
      Array.from(
        { length: NOISE_A_DRAW },
        () => value_m + scatter * deviationOf(value_m, said_m) * normal(random)
      )
    )
    .sort((a, b) => a - b);
  return [quantile(measured, 0.05), quantile(measured, 0.95)];
}

/** Of sorted values. */
export function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const next = sorted[Math.min(below + 1, sorted.length - 1)];
  return sorted[below] + (place - below) * (next - sorted[below]);
}

/** The mean of a sample. */
export function middleOf(samples: readonly Sample[]): number[] {
  return samples[0].u.map((_, j) => samples.reduce((sum, { u }) => sum + u[j], 0) / samples.length);
}

function thinned<T>(all: readonly T[], count: number): T[] {
  const n = Math.min(count, all.length);
  return Array.from({ length: n }, (_, i) => all[Math.floor(((i + 0.5) * all.length) / n)]);
}

export function measuredIn({ tests }: Problem, i: number): TestFit['measured'] {
  const { travel_m, peak_height_m } = tests[i];
  return {
    ...(travel_m !== undefined && { travel_m }),
    ...(peak_height_m !== undefined && { peak_height_m })
  };
}
