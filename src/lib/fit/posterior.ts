import type { Random } from '../model';
import { correlated, type Matrix } from './cholesky';
import { emulatorOf, type Emulator } from './emulator';
import { stretchWalkers, type Walker } from './ensemble';
import { deviationOf, type Forecast, type Measurement } from './forecast';
import { clipped, iterateAt, type Fitted, type Problem } from './least-squares';
import { normal } from './normal';

/**
 * What the tests leave open, as a sample. The model is run at a few dozen places only; between them an
 * emulator speaks for it, and its own doubt widens every deviation. Each round runs the model where the
 * sample now lies, so that the emulator is best where it matters (Conrad, Marzouk, Pillai & Smith 2016,
 * J. Am. Stat. Assoc. 111: local approximations refined along the chain).
 */
export interface Posterior {
  readonly samples: readonly Sample[];
  /** What the emulator says of each measurement at a sample, m. */
  readonly saidAt: (u: readonly number[]) => Float64Array;
  /** A sample of what is left open where these measurements were not made. */
  readonly without: (test: number) => readonly Sample[];
}

export interface Sample {
  readonly u: readonly number[];
  /** Every deviation is so many times as wide as it is said to be; 1 or more. */
  readonly scatter: number;
}

const WALKERS = 40;
const STEPS_A_ROUND = 40;
const RUNS_A_ROUND = 10;
const LEAST_ROUNDS = 2;
const MOST_ROUNDS = 5;
/** The emulator is good enough when it is off by less than this part of the deviations (root mean square). */
const GOOD = 0.15;
/** Of the sample that counts: steps to forget where it began, steps kept, and every how many of them. */
const FORGET = 60;
const KEPT = 180;
const EVERY = 6;

/**
 * ± that are said too small are common, too wide ones do no harm: the logarithm of the scatter has an
 * exponential prior of this mean. Smaller: tests that contradict one another pass for certainty.
 */
const MEAN_LOG_SCATTER = 0.12;
/** A slip of the tape or a wrong frame: one measurement in so many, with a deviation so many times as wide. */
const SLIPS = 0.05;
const SLIP_WIDTH = 4;

export function posteriorOf(
  problem: Problem,
  fitted: Fitted,
  shifts: readonly Forecast[],
  random: Random,
  tell: (share: number) => void
): Posterior {
  let walkers = begun(problem, fitted, random);
  let emulator = emulated(problem, shifts);
  const rounds = problem.unknowns.length === 0 ? 0 : MOST_ROUNDS;
  for (let round = 0; round < rounds; round++) {
    tell(round / (rounds + 1));
    walkers = sampled(walkers, densityOf(problem, emulator, problem.measurements), random);
    const off = refine(problem, walkers, emulator, shifts, random);
    emulator = emulated(problem, shifts);
    if (round + 1 >= LEAST_ROUNDS && off < GOOD) break;
  }
  const drawn = (used: readonly Measurement[]) => {
    const density = densityOf(problem, emulator, used);
    const own = sampled(walkers, density, random, FORGET);
    return Array.from({ length: KEPT / EVERY }, () => {
      stretchWalkers(own, density, EVERY, random);
      return own.map(({ at }) => ({ u: at.slice(0, -1), scatter: Math.exp(at[at.length - 1]) }));
    }).flat();
  };
  return {
    samples: drawn(problem.measurements),
    saidAt: (u) => {
      const [mean, sd] = [new Float64Array(emulator.size), new Float64Array(emulator.size)];
      emulator.at(u, mean, sd);
      return mean;
    },
    without: (test) => drawn(problem.measurements.filter((one) => one.test !== test))
  };
}

/** Around the place found, as the straight model has it, each with a little scatter. */
function begun(problem: Problem, { iterate, covariance }: Fitted, random: Random): Walker[] {
  return Array.from({ length: WALKERS }, () => {
    const by = correlated(
      covariance,
      iterate.u.map(() => normal(random))
    );
    const u = clipped(
      problem,
      iterate.u.map((one, j) => one + by[j])
    );
    return { at: [...u, -MEAN_LOG_SCATTER * Math.log(1 - random())], log: 0 };
  });
}

function emulated({ runs, measurements }: Problem, shifts: readonly Forecast[]): Emulator {
  const values: Matrix = measurements.map(({ test, figure }) =>
    runs.map(({ forecasts }) => forecasts[test][figure] + shifts[test][figure])
  );
  return emulatorOf(
    runs.map(({ u }) => u),
    values
  );
}

function sampled(
  from: readonly Walker[],
  density: (at: readonly number[]) => number,
  random: Random,
  steps = STEPS_A_ROUND
): Walker[] {
  const walkers = from.map(({ at }) => ({ at, log: density(at) }));
  stretchWalkers(walkers, density, steps, random);
  return walkers;
}

/** Runs the model at some of the sample. @returns how far the emulator was off, in deviations. */
function refine(
  problem: Problem,
  walkers: readonly Walker[],
  emulator: Emulator,
  shifts: readonly Forecast[],
  random: Random
): number {
  const [mean, sd] = [new Float64Array(emulator.size), new Float64Array(emulator.size)];
  let [squares, count] = [0, 0];
  const first = Math.floor(random() * WALKERS);
  for (let k = 0; k < RUNS_A_ROUND; k++) {
    const { at } = walkers[(first + k * (WALKERS / RUNS_A_ROUND)) % WALKERS];
    const { u, forecasts, sd_m, cost } = iterateAt(problem, at.slice(0, -1));
    if (cost === Infinity) continue;
    emulator.at(u, mean, sd);
    problem.measurements.forEach(({ test, figure }, i) => {
      squares += ((forecasts[test][figure] + shifts[test][figure] - mean[i]) / sd_m[i]) ** 2;
      count++;
    });
  }
  return Math.sqrt(squares / Math.max(count, 1));
}

/** ln of prior times likelihood, of the scaled unknowns and, last, the logarithm of the scatter. */
function densityOf(
  { unknowns, measurements }: Problem,
  emulator: Emulator,
  used: readonly Measurement[]
): (at: readonly number[]) => number {
  const [mean, sd] = [new Float64Array(emulator.size), new Float64Array(emulator.size)];
  const places = used.map((one) => measurements.indexOf(one));
  return (at) => {
    const logScatter = at[at.length - 1];
    const isInside = unknowns.every(({ bounds }, j) => at[j] >= bounds[0] && at[j] <= bounds[1]);
    if (!isInside || logScatter < 0) return -Infinity;
    const u = at.slice(0, -1);
    emulator.at(u, mean, sd);
    const prior = u.reduce((sum, one) => sum - (one * one) / 2, -logScatter / MEAN_LOG_SCATTER);
    const scatter = Math.exp(logScatter);
    return places.reduce((sum, i) => {
      const { measured_m, sd_m: said_m } = measurements[i];
      const own = scatter * deviationOf(mean[i], said_m);
      // More doubt than that would explain anything: a sample that fits badly would flee to where no run was.
      const doubt = Math.min(sd[i], own);
      return sum + logLikelihood(measured_m - mean[i], own * own + doubt * doubt);
    }, prior);
  };
}

/** Of a normal error, now and then a slip. */
function logLikelihood(off_m: number, variance_m2: number): number {
  const square = (off_m * off_m) / variance_m2;
  const usual = (1 - SLIPS) * Math.exp(-square / 2);
  const slip = (SLIPS / SLIP_WIDTH) * Math.exp(-square / (2 * SLIP_WIDTH * SLIP_WIDTH));
  // Where both are nought by rounding a slip of any size is still likelier the smaller it is.
  const likelihood = usual + slip;
  const log = likelihood > 0 ? Math.log(likelihood) : -square / (2 * SLIP_WIDTH * SLIP_WIDTH);
  return log - Math.log(variance_m2) / 2;
}
