import { LineRecorder, type LineHistory } from './line-history';
import type { Move } from './move';
import { Run, TICK_S, type Result } from './run';
import { parseScenario, type Scenario, type Setup } from './scenario';
import { tipPathOf } from './tip-path';

/** A run with all that a picture of it needs: it never has to be run again to be shown. */
export interface RecordedRun {
  readonly setup: Setup;
  readonly move: Move;
  readonly result: Result;
  readonly line: LineHistory;
}

/**
 * What the bait does: checks `input`, lays the line, makes the move and waits out the hold.
 * SI units throughout. Throws ScenarioError with the path and value of the first fault.
 */
export function simulate(input: unknown): Result {
  return simulateScenario(parseScenario(input));
}

/** The same for a scenario that has been checked already. */
export function simulateScenario({ move, hold_s, ...setup }: Scenario): Result {
  const path = tipPathOf(setup, move);
  const run = new Run(setup, path);
  runFor(run, path.duration_s + hold_s);
  return run.result();
}

/** The same, with the line's nodes kept: some 350 kB for ten seconds. */
export function recordScenario({ move, hold_s, ...setup }: Scenario): RecordedRun {
  const path = tipPathOf(setup, move);
  const run = new Run(setup, path);
  const recorder = new LineRecorder(run.nodes.x.length);
  recorder.add(run.nodes);
  runFor(run, path.duration_s + hold_s, () => recorder.add(run.nodes));
  return { setup, move, result: run.result(), line: recorder.history() };
}

/** Ticks until the time is up, and calls `look` after each. */
function runFor(run: Run, time_s: number, look?: () => void): void {
  const ticks = Math.ceil(time_s / TICK_S - 1e-9);
  for (let i = 0; i < ticks; i++) {
    run.tick();
    look?.();
  }
}
