import { compute } from '$lib/compute/browser';
import type { FitResult } from '$lib/fit';
import { ScenarioError } from '$lib/model';
import type { TestSession } from '$lib/wire';

/** A fit that is running, has run or has been stopped. */
export class FitRun {
  share = $state<number | null>(null);
  result = $state.raw<FitResult | null>(null);
  fault = $state('');
  /** The tests that the result is of. */
  of = $state.raw<TestSession | null>(null);
  #stop: AbortController | null = null;

  async start(session: TestSession): Promise<void> {
    this.cancel();
    const stop = (this.#stop = new AbortController());
    this.result = null;
    this.fault = '';
    this.share = 0;
    const { gear, tests, known, drops } = session;
    try {
      const result = await compute.ask(
        'fit',
        { gear, tests, known, drops },
        {
          signal: stop.signal,
          onprogress: (share) => this.#stop === stop && (this.share = share)
        }
      );
      if (this.#stop !== stop) return;
      [this.result, this.of] = [result, session];
    } catch (error) {
      if (stop.signal.aborted) return;
      if (!(error instanceof ScenarioError)) throw error;
      this.fault = faultWords(error);
    }
    this.share = null;
  }

  cancel(): void {
    this.#stop?.abort();
    this.#stop = null;
    this.share = null;
  }
}

/** Row and field of what the model cannot take. */
function faultWords({ path, reason }: ScenarioError): string {
  const row = /^tests\.(\d+)/.exec(path)?.[1];
  return row === undefined
    ? `The model can’t run this gear: ${path} ${reason}.`
    : `The model can’t run row ${Number(row) + 1}: ${reason}.`;
}
