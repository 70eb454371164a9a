import { compute } from '$lib/compute/browser';
import type { RecordedRun, Scenario } from '$lib/model';
import { DataError } from '$lib/scoring';
import { isRunFragment, readRunFragment } from './run-link';

/** A run that came by a link, played in its own water. */
export class SentRun {
  played = $state.raw<RecordedRun | null>(null);
  fault = $state('');

  /** Null where the address holds none that can be read. */
  async read(fragment: string): Promise<Scenario | null> {
    this.played = null;
    this.fault = '';
    if (!isRunFragment(fragment)) return null;
    try {
      const run = await readRunFragment(fragment);
      [this.played] = await compute.ask('runs', [run]);
      return run;
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      this.fault = 'Part of this run’s link is missing. Go back and play it again.';
      return null;
    }
  }
}
