import { compute } from '$lib/compute/browser';
import { ScenarioError } from '$lib/model';
import type { ClubSession, JigTable } from '$lib/wire';
import { jigTableOf, type FittedSession } from './table';

/** A table while its sessions are fitted, one after the other, and when they are. */
export class ClubRun {
  /** 0–1 while it runs. */
  share = $state<number | null>(null);
  table = $state.raw<JigTable | null>(null);
  fault = $state('');
  #stop: AbortController | null = null;

  async start(sessions: readonly ClubSession[], at: string): Promise<void> {
    this.clear();
    const stop = (this.#stop = new AbortController());
    const { signal } = stop;
    const fitted: FittedSession[] = [];
    this.share = 0;
    for (const one of sessions) {
      const { gear, tests, known, drops } = one.session;
      const onprogress = (share: number) => {
        if (!signal.aborted) this.share = (fitted.length + share) / sessions.length;
      };
      try {
        const given = { gear, tests, known, drops };
        const result = await compute.ask('fit', given, { signal, onprogress });
        fitted.push({ ...one, result });
      } catch (error) {
        if (signal.aborted) return;
        this.share = null;
        if (!(error instanceof ScenarioError)) throw error;
        const who = one.session.by || one.session.name;
        this.fault = `The model can’t run ${who}’s session: ${error.path} ${error.reason}.`;
        return;
      }
    }
    this.share = null;
    this.table = jigTableOf(fitted, at);
  }

  /** Stops it; what was made before is out of date. */
  clear(): void {
    this.#stop?.abort();
    this.#stop = null;
    this.share = null;
    this.table = null;
    this.fault = '';
  }
}
