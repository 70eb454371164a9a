import { compute } from '$lib/compute/browser';
import type { CardWanted } from '$lib/compute/jobs/card';
import { ScenarioError } from '$lib/model';
import type { CardFigures } from '$lib/wire';

/** The figures of a card while they are worked out, and when they are. */
export class MadeCard {
  /** 0–1 while it runs. */
  share = $state<number | null>(null);
  fault = $state('');
  #stop: AbortController | null = null;

  /** Null where it was stopped or cannot be. */
  async make(wanted: CardWanted): Promise<CardFigures | null> {
    this.cancel();
    const stop = (this.#stop = new AbortController());
    this.fault = '';
    this.share = 0;
    try {
      const figures = await compute.ask('card', wanted, {
        signal: stop.signal,
        onprogress: (share) => this.#stop === stop && (this.share = share)
      });
      this.share = null;
      return figures;
    } catch (error) {
      if (stop.signal.aborted) return null;
      this.share = null;
      if (!(error instanceof ScenarioError)) throw error;
      this.fault = 'The model can’t run this gear here. Pick other depths or a longer cast.';
      return null;
    }
  }

  cancel(): void {
    this.#stop?.abort();
    this.#stop = null;
    this.share = null;
  }
}
