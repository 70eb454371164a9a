import { ScenarioError } from '../model';
import { DataError } from '../scoring';
import type { JobName } from './jobs';

/** What the asking side says. */
export type JobRequest =
  { kind: 'do'; ticket: number; job: JobName; given: unknown } | { kind: 'cancel'; ticket: number };

/** What the working side says. Of work that was cancelled nothing is said any more. */
export type Told =
  | { kind: 'progress'; ticket: number; runs: number }
  /** The work's code could not be fetched: no network, or a newer version of the app. */
  | { kind: 'unable'; ticket: number; message: string }
  | { kind: 'done'; ticket: number; outcome: JobOutcome };

/** What was made, or what was wrong, fit to be sent from one thread to another. */
export type JobOutcome =
  | { is: 'made'; made: unknown }
  | { is: 'fault'; path: string; value: unknown; reason: string; of: 'data' | 'scenario' }
  | { is: 'error'; message: string };

/** A way between the two sides: a worker, a thread, or none at all in one page. */
export interface Port<Out, In> {
  post(message: Out, moves?: ArrayBufferLike[]): void;
  onmessage(hear: (message: In) => void): void;
}

/** The asking side's end of it. */
export interface HostPort extends Port<JobRequest, Told> {
  /** Called once, when nothing more will come. */
  onend(ended: () => void): void;
  close(): void;
}

export function outcomeOfError(error: unknown): JobOutcome {
  if (error instanceof DataError || error instanceof ScenarioError) {
    const { path, value, reason } = error;
    return {
      is: 'fault',
      path,
      value,
      reason,
      of: error instanceof DataError ? 'data' : 'scenario'
    };
  }
  return { is: 'error', message: error instanceof Error ? error.message : String(error) };
}

/** Throws DataError or ScenarioError for what was wrong with what was given. */
export function madeIn(outcome: JobOutcome): unknown {
  if (outcome.is === 'made') return outcome.made;
  if (outcome.is === 'error') throw new Error(`in a compute worker: ${outcome.message}`);
  const { path, value, reason } = outcome;
  throw outcome.of === 'data'
    ? new DataError(path, value, reason)
    : new ScenarioError(path, value, reason);
}
