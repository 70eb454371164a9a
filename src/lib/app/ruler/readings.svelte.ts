import { findChallenge } from '$lib/course';
import { challengeOfTry, measuredOf, type ScheduledTry } from '$lib/practice';
import { runTries, tryRuns, type TryRun } from '$lib/app/try';
import type { StoredTry } from '$lib/wire';

/** Practised tries as the schedule reads them. */
export class Readings {
  /** Whether all tries have been read; before that the schedule would be told half. */
  isAll = $state(true);
  /** How many tries today's model cannot run. */
  leftOut = $state(0);
  #all = $state.raw<Readonly<Record<string, ScheduledTry>>>({});

  /** Keeps up with these tries, for an effect. @returns how to stop. */
  follow(tries: readonly StoredTry[]): () => void {
    const practised = tries.flatMap((made) => {
      // No lesson: what was made in one is no practice.
      const challenge = made.phase && challengeOfTry(made, (id) => findChallenge(id, []));
      return challenge ? [{ made, challenge }] : [];
    });
    return runTries(practised, (isAll) => {
      this.isAll = isAll;
      if (!isAll) return;
      const known = practised.map(({ made }) => ({ made, graded: tryRuns.known(made) }));
      this.leftOut = known.filter(({ graded }) => graded === null).length;
      this.#all = Object.fromEntries(
        known.flatMap(({ made, graded }) => {
          const reading = graded && readingOf(made, graded);
          return reading ? [[made.id, reading]] : [];
        })
      );
    });
  }

  /** Null for a try that is no practice, cannot be run, or has not been read. */
  readonly of = ({ id }: StoredTry): ScheduledTry | null => this.#all[id] ?? null;
}

function readingOf({ phase, at }: StoredTry, graded: TryRun): ScheduledTry | null {
  const measured = measuredOf(graded.challenge, graded);
  return measured && phase ? { ...measured, phase, at_ms: Date.parse(at) } : null;
}
