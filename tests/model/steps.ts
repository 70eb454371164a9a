import { simulate, type ScenarioInput } from '../../src/lib/model';

/** Steps of a quarter of the shortest that a run usually takes, s: what is lost in them is not seen. */
const FINE_STEP_S = 0.00125 / 4;
/** A travel or height is right to this whatever its share, m, and a pull to this: a gram's weight, N. */
const LEAST_M = 1e-3;
const LEAST_N = 0.01;

/** What following the motion with its steps loses of a run's figures, as shares of them. */
export interface StepError {
  travel: number;
  height: number;
  pull: number;
}

export function stepErrorOf(scenario: ScenarioInput): StepError {
  const run = simulate(scenario);
  const fine = simulate({ ...scenario, numerics: { step_s: FINE_STEP_S } });
  return {
    travel: off(run.travel_m, fine.travel_m, LEAST_M),
    height: off(run.peak_height_m, fine.peak_height_m, LEAST_M),
    pull: off(run.peak_tip_tension_N, fine.peak_tip_tension_N, LEAST_N)
  };
}

function off(value: number, exact: number, least: number): number {
  const by = Math.abs(value - exact);
  return by < least ? 0 : by / Math.abs(exact);
}
