import { Run, TICK_S, type Result } from './run';
import { parseScenario, type Scenario } from './scenario';
import { tipPathOf } from './tip-path';

/**
 * What the bait does: checks `input`, lays the line, makes the move and waits out the hold.
 * SI units throughout. Throws ScenarioError with the path and value of the first fault.
 */
export function simulate(input: unknown): Result {
  return simulateScenario(parseScenario(input));
}

/** The same for a scenario that has been checked already. */
export function simulateScenario(scenario: Scenario): Result {
  const { move, hold_s, ...setup } = scenario;
  const path = tipPathOf(setup, move);
  const run = new Run(setup, path);
  const ticks = Math.ceil((path.duration_s + hold_s) / TICK_S - 1e-9);
  for (let i = 0; i < ticks; i++) run.tick();
  return run.result();
}
