import { setImmediate } from 'node:timers/promises';
import type { Db } from './store';

/** What is asked for, and what came of each, in the same order. */
type Work<Ask, Answer> = (db: Db, asks: Ask[]) => Promise<Answer[]>;

interface Waiting<Ask, Answer> {
  ask: Ask;
  done: (answer: Answer) => void;
  fail: (error: unknown) => void;
}

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

  constructor(private readonly work: (asks: Ask[]) => Promise<Answer[]>) {}

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
      await this.#answerSome(this.#waiting.splice(0, AT_ONCE));
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

/** The same work for all who ask for it at one store. */
export function queryBatcher<Ask, Answer>(
  work: Work<Ask, Answer>
): (db: Db, ask: Ask) => Promise<Answer> {
  const of = new WeakMap<Db, QueryBatcher<Ask, Answer>>();
  return (db, ask) => {
    const one = of.get(db) ?? new QueryBatcher((asks: Ask[]) => work(db, asks));
    of.set(db, one);
    return one.ask(ask);
  };
}
