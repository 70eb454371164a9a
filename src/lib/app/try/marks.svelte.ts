import type { StoredTry } from '$lib/practice';
import type { Challenge } from '$lib/scoring';
import { bestOf, knownMarks, marksFor, type GradedTry } from './marks';

/**
 * The marks of a learner's tries at some challenges, graded again from the rod input. The newest come
 * first, and the page is left free between two: a run of the model takes as long as a frame.
 */
export class Marks {
  /** Oldest first. */
  all = $state.raw<readonly GradedTry[]>([]);
  /** Best marks by challenge id, of those that were tried. */
  readonly best = $derived(bestOf(this.all));

  constructor(private readonly challenges: readonly Challenge[]) {}

  /** The graded tries at a challenge, oldest first. */
  at({ id }: Challenge): readonly GradedTry[] {
    return this.all.filter(({ stored }) => stored.challenge === id);
  }

  /** Keeps up with these tries, for an effect. @returns how to stop. */
  follow(tries: readonly StoredTry[]): () => void {
    const stop = new AbortController();
    void this.#grade(tries, stop.signal);
    return () => stop.abort();
  }

  async #grade(tries: readonly StoredTry[], signal: AbortSignal): Promise<void> {
    const mine = tries.flatMap((stored) => {
      const challenge = this.challenges.find(({ id }) => id === stored.challenge);
      return challenge ? { challenge, stored } : [];
    });
    const tell = () => (this.all = mine.flatMap(({ stored }) => knownMarks(stored) ?? []));
    tell();
    for (const { challenge, stored } of [...mine].reverse()) {
      if (knownMarks(stored) !== undefined) continue;
      marksFor(challenge, stored);
      tell();
      await new Promise((resolve) => setTimeout(resolve));
      if (signal.aborted) return;
    }
    // Others at the same tries may have graded some of them meanwhile.
    tell();
  }
}
