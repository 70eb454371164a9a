import { parseScenario, ScenarioError, simulateScenario } from '../model';
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
 * small beside a measurement's 15 %, and the runs take half as long.
 */
const SEGMENTS = 20;

/**
 * Runs a test with these values. Null where no such outfit can be: the tip would be at the bait, or
 * the line too short.
 */
export function forecastOf(test: PoolTest, values: Values): Forecast | null {
  try {
    const { travel_m, peak_height_m } = simulateScenario(scenarioFor(test, values));
    return { travel_m, peak_height_m };
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}

function scenarioFor(test: PoolTest, values: Values) {
  const numerics = { segments: SEGMENTS, ...test.setup.numerics };
  return parseScenario({ ...testScenarioOf(test, values), numerics });
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
