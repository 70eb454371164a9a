import type { Challenge, Correction } from '$lib/scoring';
import { correctionOf } from './corrections';

/** The move that would have done a challenge, worked out meanwhile: another may be asked for before. */
export class SolvedMove {
  /** Undefined while it is being solved; null where no single move does it. */
  correction = $state.raw<Correction | null | undefined>();
  #asked: Challenge | null = null;

  follow(challenge: Challenge): void {
    this.#asked = challenge;
    this.correction = undefined;
    void correctionOf(challenge).then((solved) => {
      if (this.#asked === challenge) this.correction = solved;
    });
  }
}
