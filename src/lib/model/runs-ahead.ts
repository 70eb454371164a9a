import type { RecordedRun } from './recorded-run';
import type { Result } from './run';
import type { Scenario } from './scenario';

/** What a piece of work asks for that has not been run yet. Whoever runs the work catches it. */
export class RunWanted extends Error {
  constructor(
    readonly scenario: Scenario,
    /** Whether the line's nodes are wanted, too. */
    readonly isRecorded: boolean
  ) {
    super('a run of the model is wanted that has not been made');
    this.name = 'RunWanted';
  }
}

/**
 * Runs made ahead of the work that asks for them. Work that needs many runs (a correction, a question)
 * is plain code that calls `simulate`; where it must not hold up a page, it is begun with no runs at
 * all, breaks off at the first it wants, and is begun again once that has been run, a little at a
 * time. The model being a pure function, it comes to the same in the end.
 */
export class RunsAhead {
  private readonly results = new Map<string, Result>();
  private readonly records = new Map<string, RecordedRun>();

  /** How many runs there are. */
  get count(): number {
    return this.results.size + this.records.size;
  }

  keepResult(scenario: Scenario, result: Result): void {
    this.results.set(nameOf(scenario), result);
  }

  keepRecord(scenario: Scenario, run: RecordedRun): void {
    this.records.set(nameOf(scenario), run);
  }

  /** Throws RunWanted. */
  resultOf(scenario: Scenario): Result {
    const result = this.results.get(nameOf(scenario));
    if (!result) throw new RunWanted(scenario, false);
    return result;
  }

  /** Throws RunWanted. */
  recordOf(scenario: Scenario): RecordedRun {
    const run = this.records.get(nameOf(scenario));
    if (!run) throw new RunWanted(scenario, true);
    return run;
  }
}

const nameOf = (scenario: Scenario): string => JSON.stringify(scenario);

let inUse: RunsAhead | null = null;

/** The runs that `simulate` takes its results from; null where it runs the model itself. */
export function runsInUse(): RunsAhead | null {
  return inUse;
}

/** Does `work` with these runs and no others. Throws RunWanted for the first that is not there. */
export function withRunsAhead<T>(runs: RunsAhead, work: () => T): T {
  const before = inUse;
  inUse = runs;
  try {
    return work();
  } finally {
    inUse = before;
  }
}
