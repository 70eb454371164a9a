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
 * What waits for the disk holds up everything else on SQLite, which writes on the thread that serves. Between
 * two such statements others get at least as long as the last one took, ms: at most half of the time goes to
 * the disk, and the next takes along what comes meanwhile. No longer than this, on a disk that hardly answers.
 */
const MOST_BREATH_MS = 40;

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
      await this.#answerSome(this.#waiting.splice(0, AT_ONCE));
      const took = performance.now() - from;
      if (this.isForDisk) await setTimeout(Math.min(took, MOST_BREATH_MS));
    }
    this.#isBusy = false;
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
