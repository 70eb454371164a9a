import { taskIdOf, tryNamed } from '$lib/course';
import { challengeOfTry } from '$lib/practice';
import type { StoredTry } from '$lib/wire';
import type { Challenge } from '$lib/scoring';
import { bestOf, gradedTry, markedTry, type GradedTry, type MarkedTry } from './graded-try';
import { runTries } from './run-tries';
import { tryRuns } from './try-runs';

/** The marks of a learner's tries at some challenges; the newest come first. */
export class Marks {
  /** Oldest first. */
  all = $state.raw<readonly GradedTry[]>([]);
  /** With those that today's model cannot run, if they kept their marks. */
  #marked = $state.raw<readonly MarkedTry[]>([]);
  /** How many tries today's model cannot run. */
  leftOut = $state(0);
  /** False while tries are still being run: no count of them is true before. */
  isAll = $state(false);
  /** Best marks by challenge id, of those that were tried. */
  readonly best = $derived.by(() => bestOf(this.#marked, this.challenges));

  constructor(private readonly challenges: readonly Challenge[]) {}

  /** The graded tries at a challenge, oldest first. */
  at({ id }: Challenge): readonly GradedTry[] {
    return this.all.filter(({ stored }) => taskIdOf(stored.challenge) === id);
  }

  /** Keeps up with these tries, for an effect. @returns how to stop. */
  follow(tries: readonly StoredTry[]): () => void {
    const mine = tries.flatMap((made) => {
      const challenge = challengeOfTry(made, (id) => tryNamed(id, this.challenges));
      return challenge ? [{ challenge, made }] : [];
    });
    return runTries([...mine].reverse(), (isAll) => {
      this.isAll = isAll;
      this.all = mine.flatMap(({ made }) => gradedTry(made) ?? []);
      this.#marked = mine.flatMap(({ made }) => markedTry(made) ?? []);
      this.leftOut = mine.filter(({ made }) => tryRuns.known(made) === null).length;
    });
  }
}
