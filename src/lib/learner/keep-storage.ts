import type { LearnerRecord } from '$lib/wire';

/** Parts of a record that nobody would like to do again. */
const WORTH = ['tries', 'answers', 'outfits', 'sessions', 'entries', 'club'] as const;

type Keeper = Pick<StorageManager, 'persist' | 'persisted'>;

/**
 * Asks the browser, once there is something to lose, not to clear the record away when the disk runs
 * full or the page was not visited for a week. Some browsers ask their user, others decide by themselves;
 * either way it is asked once a visit at most.
 */
export class StorageKeeping {
  #isAsked = false;

  /** @param storage none where the page has no secure context */
  constructor(private readonly storage: Keeper | undefined) {}

  async keep(record: Pick<LearnerRecord, (typeof WORTH)[number]>): Promise<void> {
    if (this.#isAsked || !this.storage || WORTH.every((part) => record[part].length === 0)) return;
    this.#isAsked = true;
    try {
      if (!(await this.storage.persisted())) await this.storage.persist();
    } catch {
      // Kept as long as the browser likes, as before.
    }
  }
}
