import { RunsAhead, RunWanted, ScenarioRun, withRunsAhead } from '../model';

/** How a host works: how long at a time, and what it does between. */
export interface Slicing {
  /** The longest that it is held, ms, but for what cannot be divided: laying a line, reading a trace. */
  slice_ms: number;
  /** Lets go, so that a page is drawn or a message is heard. */
  breathe: () => Promise<void>;
  /** Whether what is drawn waits for it: then nothing is done in one go. */
  isPage?: boolean;
}

/** Whoever asked wants it no more. */
export class Cancelled extends Error {
  constructor() {
    super('the work was cancelled');
    this.name = 'Cancelled';
  }
}

interface Watch {
  /** Called after each run of the model with how many there have been. */
  onrun?: (runs: number) => void;
  isCancelled?: () => boolean;
}

/** The model is run so many ticks between two looks at the clock: a millisecond or less. */
const TICKS_AT_ONCE = 8;

/**
 * Does work that runs the model many times, a slice at a time: its runs are made ahead of it, and it is
 * begun again after each (see RunsAhead). Throws what the work throws, and Cancelled.
 */
export async function doneInSlices<T>(work: () => T, pace: Slicing, watch: Watch = {}): Promise<T> {
  const runs = new RunsAhead();
  let ends_ms = performance.now() + pace.slice_ms;
  const rest = async () => {
    if (performance.now() < ends_ms) return;
    await pace.breathe();
    if (watch.isCancelled?.()) throw new Cancelled();
    ends_ms = performance.now() + pace.slice_ms;
  };
  for (;;) {
    const wanted = wantedBy(runs, work);
    if ('made' in wanted) return wanted.made;
    await rest();
    await make(wanted.run, runs, rest);
    watch.onrun?.(runs.count);
    await rest();
  }
}

function wantedBy<T>(runs: RunsAhead, work: () => T): { made: T } | { run: RunWanted } {
  try {
    return { made: withRunsAhead(runs, work) };
  } catch (error) {
    if (error instanceof RunWanted) return { run: error };
    throw error;
  }
}

async function make(
  { scenario, isRecorded }: RunWanted,
  runs: RunsAhead,
  rest: () => Promise<void>
): Promise<void> {
  const run = new ScenarioRun(scenario, isRecorded);
  while (!run.advance(TICKS_AT_ONCE)) await rest();
  if (isRecorded) runs.keepRecord(scenario, run.recorded());
  else runs.keepResult(scenario, run.result());
}
