import { setImmediate, setTimeout } from 'node:timers/promises';
import type { Db } from './store';

/** What is asked for, and what came of each, in the same order. */
type Work<Ask, Answer> = (db: Db, asks: Ask[]) => Promise<Answer[]>;

interface Waiting<Ask, Answer> {
  ask: Ask;
  done: (answer: Answer) => void;
  fail: (error: unknown) => void;
}

/**
 * A statement costs much more than a row of it, and one that waits for the disk holds up everything else on
 * SQLite, which writes on the thread that serves. So where several come at once the next statement waits this
 * long and takes along what comes meanwhile, ms. Shorter: a room that votes spends the server on statements.
 * Longer: a vote is thanked for later than a thumb would notice.
 */
const GATHER_MS = { read: 10, disk: 50 };
/** To a slow disk goes half of the time at most, but nobody waits for longer than this, ms. */
const MOST_GATHER_MS = 200;

/** Asks in one statement at most: SQLite takes 32,766 values. */
const AT_ONCE = 200;

/**
 * Does by one statement what is asked for while the statement before is under way: a room that votes
 * together would else make five hundred ways to the database, each dearer than what is fetched, and
 * wait for the disk as often. A statement always begins after its last ask.
 */
class QueryBatcher<Ask, Answer> {
  #waiting: Waiting<Ask, Answer>[] = [];
  #isBusy = false;

  constructor(
    private readonly work: (asks: Ask[]) => Promise<Answer[]>,
    private readonly isForDisk: boolean
  ) {}

  ask(ask: Ask): Promise<Answer> {
    return new Promise((done, fail) => {
      this.#waiting.push({ ask, done, fail });
      if (!this.#isBusy) void this.#answerAll();
    });
  }

  async #answerAll(): Promise<void> {
    this.#isBusy = true;
    while (this.#waiting.length > 0) {
      // Whatever else has arrived by now comes along.
      await setImmediate();
      const from = performance.now();
      const some = this.#waiting.splice(0, AT_ONCE);
      await this.#answerSome(some);
      await this.#gather(some.length, performance.now() - from);
    }
    this.#isBusy = false;
  }

  /** Who comes alone, one thing after the other, is not kept waiting for company. */
  async #gather(count: number, took_ms: number): Promise<void> {
    const least_ms = count > 1 ? GATHER_MS[this.isForDisk ? 'disk' : 'read'] : 0;
    const wait_ms = Math.max(least_ms, this.isForDisk ? took_ms : 0);
    if (wait_ms > 0) await setTimeout(Math.min(wait_ms, MOST_GATHER_MS));
  }

  async #answerSome(some: Waiting<Ask, Answer>[]): Promise<void> {
    try {
      const answers = await this.work(some.map(({ ask }) => ask));
      some.forEach(({ done }, i) => done(answers[i]));
    } catch (error) {
      for (const { fail } of some) fail(error);
    }
  }
}

export const FOR_DISK = { isForDisk: true };

/**
 * The same work for all who ask for it at one store.
 * @param isForDisk whether it waits until something is on the disk
 */
export function queryBatcher<Ask, Answer>(
  work: Work<Ask, Answer>,
  { isForDisk = false } = {}
): (db: Db, ask: Ask) => Promise<Answer> {
  const of = new WeakMap<Db, QueryBatcher<Ask, Answer>>();
  return (db, ask) => {
    const one = of.get(db) ?? new QueryBatcher((asks: Ask[]) => work(db, asks), isForDisk);
    of.set(db, one);
    return one.ask(ask);
  };
}
