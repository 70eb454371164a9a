import {
  parseScenario,
  ScenarioError,
  ScenarioRun,
  simulateScenario,
  TICK_S,
  tipPathOf,
  type Result,
  type Scenario,
  type SetupInput
} from '../model';
import type { PoolTest } from './session';
import { testScenarioOf, type Unknown, type Values } from './unknowns';

/** What the model says of a test. */
export interface Forecast {
  readonly travel_m: number;
  readonly peak_height_m: number;
}

/** Deviation of a measurement that says none: this part of what is predicted, and at least so much, m. */
const SD_PART = 0.15;
const LEAST_SD_M = 0.02;

/** The deviation that a measurement of a predicted value has, m: its own, or 15 %, at least 2 cm. */
export function deviationOf(predicted_m: number, said_m?: number): number {
  return said_m ?? Math.max(SD_PART * Math.abs(predicted_m), LEAST_SD_M);
}

/** The values that scaled unknowns and known ones stand for. */
export function valuesAt(
  unknowns: readonly Unknown[],
  scaled: readonly number[],
  known: Values
): Values {
  const fitted = unknowns.map(({ name, at }, i) => [name, at(scaled[i])]);
  return { ...known, ...Object.fromEntries(fitted) };
}

/**
 * Segments of the line where the gear asks for none: half the model's own. Its error, about 1 %, is
 * small beside a measurement's 15 %, and the runs take half as long; see refined.ts for finer ones.
 */
const SEGMENTS = 20;

/** No shift. */
const NOUGHT: Forecast = { travel_m: 0, peak_height_m: 0 };

/** A bait that has lain on the bottom so long after the move, s, and moved by no more, m, is done. */
const STILL_S = 0.6;
const STILL_M = 2e-4;

/**
 * Runs a test with these values, on the coarse line and no longer than the bait moves, and adds the shift. Null where no such outfit can
 * be: the tip would be at the bait, or the line too short.
 */
export function forecastOf(test: PoolTest, values: Values, shift = NOUGHT): Forecast | null {
  const numerics = { segments: SEGMENTS, ...test.setup.numerics };
  const coarse = possible(() => untilStill(scenarioOf(test, values, numerics)));
  if (!coarse) return null;
  return {
    travel_m: coarse.travel_m + shift.travel_m,
    peak_height_m: coarse.peak_height_m + shift.peak_height_m
  };
}

/**
 * What the model's own segments make of it, waited out to the end, beside the coarse line's. A line that
 * sinks long after the bait lay still may draw it on by millimetres.
 */
export function fineShiftOf(test: PoolTest, values: Values): Forecast {
  const fine = possible(() => runOf(test, values));
  const coarse = forecastOf(test, values);
  if (!fine || !coarse) return NOUGHT;
  return {
    travel_m: fine.travel_m - coarse.travel_m,
    peak_height_m: fine.peak_height_m - coarse.peak_height_m
  };
}

function possible(work: () => Forecast): Forecast | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}

/** Throws ScenarioError where no such outfit can be. */
export function runOf(test: PoolTest, values: Values): Forecast {
  return figuresOf(simulateScenario(scenarioOf(test, values, test.setup.numerics)));
}

function scenarioOf(test: PoolTest, values: Values, numerics: SetupInput['numerics']): Scenario {
  return parseScenario({ ...testScenarioOf(test, values), numerics });
}

function untilStill(scenario: Scenario): Forecast {
  const run = new ScenarioRun(scenario, false);
  const looks = Math.round(STILL_S / TICK_S);
  let isOver = run.advance(Math.ceil(tipPathOf(scenario, scenario.move).duration_s / TICK_S));
  while (!isOver) {
    isOver = run.advance(looks);
    if (isStill(run.result(), looks)) break;
  }
  return figuresOf(run.result());
}

/** Whether the bait lay still on the bottom over the last so many ticks. */
function isStill({ trace: { bait_x_m, contact } }: Result, ticks: number): boolean {
  const x_m = bait_x_m.slice(-ticks);
  return !contact.slice(-ticks).includes(0) && Math.max(...x_m) - Math.min(...x_m) < STILL_M;
}

function figuresOf({ travel_m, peak_height_m }: Result): Forecast {
  return { travel_m, peak_height_m };
}

/** One measured number of a session. */
export interface Measurement {
  /** Of the test. */
  readonly test: number;
  readonly figure: 'travel_m' | 'peak_height_m';
  readonly measured_m: number;
  readonly sd_m?: number;
}

export function measurementsOf(tests: readonly PoolTest[]): Measurement[] {
  return tests.flatMap((one, test): Measurement[] => [
    ...(one.travel_m === undefined
      ? []
      : [{ test, figure: 'travel_m' as const, measured_m: one.travel_m, sd_m: one.travel_sd_m }]),
    ...(one.peak_height_m === undefined
      ? []
      : [
          {
            test,
            figure: 'peak_height_m' as const,
            measured_m: one.peak_height_m,
            sd_m: one.height_sd_m
          }
        ])
  ]);
}
