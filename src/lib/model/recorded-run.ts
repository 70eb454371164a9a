import type { LineHistory } from './line-history';
import type { Move } from './move';
import type { Result } from './run';
import type { Setup } from './scenario';

/** A run with all that a picture of it needs: it never has to be run again to be shown. */
export interface RecordedRun {
  readonly setup: Setup;
  readonly move: Move;
  readonly result: Result;
  readonly line: LineHistory;
}
