import { allLessons, drills } from '$lib/course';
import { today, type Question, type Today } from '$lib/practice';
import { localDays } from '$lib/learner';
import { Readings } from '$lib/app/ruler';
import type { LearnerRecord, StoredTry } from '$lib/wire';

const course = { lessons: allLessons(), drills };

/** What there is to do today. */
export class DayAhead {
  readonly #readings = new Readings();

  constructor(private readonly questions: readonly Question[]) {}

  /** Keeps up with these tries, for an effect. @returns how to stop. */
  follow(tries: readonly StoredTry[]): () => void {
    return this.#readings.follow(tries);
  }

  /** Undefined until all tries were read: what half of them say would change under a finger. */
  planFor(record: LearnerRecord): Today | null | undefined {
    if (!this.#readings.isAll) return undefined;
    const now = { at_ms: Date.now(), days: localDays() };
    return today(record, { ...course, questions: this.questions }, now, this.#readings.of);
  }
}
