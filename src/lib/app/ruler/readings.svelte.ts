import type { ScheduledTry, StoredTry } from '$lib/practice';
import { littleByLittle } from '$lib/app/try';
import { knownReading, scheduled } from './scheduled';

/** Practised tries as the schedule reads them. The model runs each again, a few at a time. */
export class Readings {
  /** Whether all tries have been read; before that the schedule would be told half. */
  isAll = $state(true);
  #all = $state.raw<Readonly<Record<string, ScheduledTry>>>({});

  /** Keeps up with these tries, for an effect. @returns how to stop. */
  follow(tries: readonly StoredTry[]): () => void {
    const practised = tries.filter(({ phase }) => phase !== undefined);
    const unread = practised.filter((made) => knownReading(made) === undefined);
    return littleByLittle(unread, scheduled, (isAll) => {
      this.isAll = isAll;
      if (isAll) this.#all = Object.fromEntries(practised.flatMap(entryOf));
    });
  }

  /** Null for a try that is no practice, cannot be run, or has not been read. */
  readonly of = ({ id }: StoredTry): ScheduledTry | null => this.#all[id] ?? null;
}

function entryOf(made: StoredTry): [string, ScheduledTry][] {
  const reading = knownReading(made);
  return reading ? [[made.id, reading]] : [];
}
