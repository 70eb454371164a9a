import { parseScenario, ScenarioError, simulateScenario, type SetupInput } from '../model';
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

/**
 * Runs a test with these values, on the coarse line, and adds the shift. Null where no such outfit can
 * be: the tip would be at the bait, or the line too short.
 */
export function forecastOf(test: PoolTest, values: Values, shift = NOUGHT): Forecast | null {
  const coarse = run(test, values, { segments: SEGMENTS, ...test.setup.numerics });
  if (!coarse) return null;
  return {
    travel_m: coarse.travel_m + shift.travel_m,
    peak_height_m: coarse.peak_height_m + shift.peak_height_m
  };
}

/** What the model's own segments make of it beside the coarse line's; nought where the gear asks for some. */
export function fineShiftOf(test: PoolTest, values: Values): Forecast {
  if (test.setup.numerics?.segments !== undefined) return NOUGHT;
  const fine = run(test, values, test.setup.numerics);
  const coarse = forecastOf(test, values);
  if (!fine || !coarse) return NOUGHT;
  return {
    travel_m: fine.travel_m - coarse.travel_m,
    peak_height_m: fine.peak_height_m - coarse.peak_height_m
  };
}

function run(test: PoolTest, values: Values, numerics: SetupInput['numerics']): Forecast | null {
  try {
    return runOf(test, values, numerics);
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}

/** Throws ScenarioError where no such outfit can be. */
export function runOf(
  test: PoolTest,
  values: Values,
  numerics: SetupInput['numerics'] = test.setup.numerics
): Forecast {
  const scenario = parseScenario({ ...testScenarioOf(test, values), numerics });
  const { travel_m, peak_height_m } = simulateScenario(scenario);
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
