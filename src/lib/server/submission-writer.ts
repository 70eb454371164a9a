import type { Db } from './store';
import type { Tables } from './tables';

type Row = Tables['submissions'];

interface Waiting {
  row: Row;
  done: (isNew: boolean) => void;
  fail: (error: unknown) => void;
}

/** Rows in one statement at most: SQLite takes 32,766 values. */
const AT_ONCE = 200;

/**
 * Writes what came in the same moment by one statement, and so waits for the disk once: a room that
 * votes together would else wait for it five hundred times, one after the other.
 */
class SubmissionWriter {
  #waiting: Waiting[] = [];
  #isWriting = false;

  constructor(private readonly db: Db) {}

  /** Resolves when the row is on the disk: true if it is new, false if its key was there before. */
  write(row: Row): Promise<boolean> {
    return new Promise((done, fail) => {
      this.#waiting.push({ row, done, fail });
      if (!this.#isWriting) void this.#writeAll();
    });
  }

  async #writeAll(): Promise<void> {
    this.#isWriting = true;
    while (this.#waiting.length > 0) {
      // Whatever else has arrived by now comes along.
      await new Promise((resolve) => setImmediate(resolve));
      await this.#writeSome(this.#waiting.splice(0, AT_ONCE));
    }
    this.#isWriting = false;
  }

  async #writeSome(some: Waiting[]): Promise<void> {
    const first = new Map(some.map((one) => [keyOf(one.row), one] as const).reverse());
    try {
      const written = await this.db
        .insertInto('submissions')
        .values([...first.values()].map(({ row }) => row))
        .onConflict((conflict) => conflict.columns(['scope', 'id']).doNothing())
        .returning(['scope', 'id'])
        .execute();
      const isNew = new Set(written.map(keyOf));
      // The same key twice in one statement: the first is the new one.
      for (const one of some)
        one.done(isNew.has(keyOf(one.row)) && first.get(keyOf(one.row)) === one);
    } catch (error) {
      for (const { fail } of some) fail(error);
    }
  }
}

const keyOf = ({ scope, id }: { scope: string; id: string }) => JSON.stringify([scope, id]);

const writers = new WeakMap<Db, SubmissionWriter>();

/** The one writer of a store. */
export function writerOf(db: Db): SubmissionWriter {
  const writer = writers.get(db) ?? new SubmissionWriter(db);
  writers.set(db, writer);
  return writer;
}
