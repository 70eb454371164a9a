import { LineRecorder } from './line-history';
import type { RecordedRun } from './recorded-run';
import { TICK_S, type Move } from './move';
import { Run, type Result } from './run';
import { checkCost } from './run-cost';
import { runsInUse } from './runs-ahead';
import { parseScenario, type Scenario, type Setup } from './scenario';
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
  const ahead = runsInUse();
  if (ahead) return ahead.resultOf(scenario);
  const run = new ScenarioRun(scenario, false);
  run.advance(Infinity);
  return run.result();
}

/** The same, with the line's nodes kept: some 350 kB for ten seconds. */
export function recordScenario(scenario: Scenario): RecordedRun {
  const ahead = runsInUse();
  if (ahead) return ahead.recordOf(scenario);
  const run = new ScenarioRun(scenario, true);
  run.advance(Infinity);
  return run.recorded();
}

/** A scenario that is run a little at a time. The result does not depend on how little. */
export class ScenarioRun {
  private readonly run: Run;
  private readonly setup: Setup;
  private readonly move: Move;
  private readonly recorder: LineRecorder | null;
  private readonly endsAtBottom: boolean;
  private left: number;

  /** Throws ScenarioError when the line cannot be laid, or the run would take too long. */
  constructor({ move, hold_s, until, ...setup }: Scenario, isRecorded: boolean) {
    this.setup = setup;
    this.move = move;
    this.endsAtBottom = until === 'bottom';
    const path = tipPathOf(setup, move);
    checkCost(setup, path.duration_s, hold_s);
    this.run = new Run(setup, path);
    this.left = Math.ceil((path.duration_s + hold_s) / TICK_S - 1e-9);
    this.recorder = isRecorded ? new LineRecorder(this.run.nodes.x.length) : null;
    this.recorder?.add(this.run.nodes);
  }

  /** Runs so many ticks more, or to the end. @returns whether that was the end. */
  advance(ticks: number): boolean {
    for (let i = 0; i < ticks && this.left > 0; i++) {
      this.run.tick();
      this.left--;
      this.recorder?.add(this.run.nodes);
      if (this.endsAtBottom && this.run.hasTouched) this.left = 0;
    }
    return this.left === 0;
  }

  result(): Result {
    return this.run.result();
  }

  /** Throws where nothing was recorded. */
  recorded(): RecordedRun {
    if (!this.recorder) throw new Error('the line of this run was not recorded');
    const { setup, move } = this;
    return { setup, move, result: this.run.result(), line: this.recorder.history() };
  }
}
