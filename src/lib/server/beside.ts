import { Worker } from 'node:worker_threads';
import { Refusal } from './faults';
import {
  answerTo,
  costOf_s,
  madeIn,
  type Answer,
  type GivenFor,
  type Kind,
  type MadeBy
} from './beside-work';
import { describeError, log } from './log';

/** What is needed of a thread. */
export type Thread = Pick<Worker, 'on' | 'postMessage' | 'unref' | 'terminate'>;

/** Work in hand at most, s: the tries of a full room that all come at once, ten seconds each. */
const MOST_WAITING_S = 60;

interface Waiting {
  cost_s: number;
  done: (answer: Answer) => void;
  fail: (refusal: Refusal) => void;
}

/**
 * Works in a thread of its own, one question after the other, so that a room's votes and tries do not
 * stand still meanwhile. What it refuses as too much a phone keeps and sends again.
 */
export class Beside {
  #thread: Thread | null = null;
  #waiting = new Map<number, Waiting>();
  #asked = 0;

  constructor(private readonly start: () => Thread) {}

  async ask<K extends Kind>(kind: K, given: GivenFor<K>): Promise<MadeBy<K>> {
    const cost_s = costOf_s({ kind, given });
    if (this.#inHand_s() + cost_s > MOST_WAITING_S) {
      throw new Refusal(503, 'Too much to work out just now. Nothing was taken; try again later.');
    }
    const ticket = ++this.#asked;
    // Asked first: what could not be asked is not in hand.
    this.#running().postMessage({ ticket, question: { kind, given } });
    const answer = await new Promise<Answer>((done, fail) => {
      this.#waiting.set(ticket, { cost_s, done, fail });
    });
    return madeIn<K>(answer);
  }

  #inHand_s(): number {
    return [...this.#waiting.values()].reduce((sum, { cost_s }) => sum + cost_s, 0);
  }

  #running(): Thread {
    if (this.#thread) return this.#thread;
    const thread = this.start();
    // A server that is told to stop does not wait for it.
    thread.unref();
    thread.on('message', ({ ticket, answer }: { ticket: number; answer: Answer }) => {
      this.#waiting.get(ticket)?.done(answer);
      this.#waiting.delete(ticket);
    });
    thread.on('error', (error) => log('thread beside broke off', describeError(error)));
    thread.on('exit', () => this.#ended(thread));
    return (this.#thread = thread);
  }

  /** The next question starts another one. */
  #ended(thread: Thread): void {
    if (this.#thread !== thread) return;
    this.#thread = null;
    const refusal = new Refusal(
      503,
      'Working it out broke off. Nothing was taken; try again later.'
    );
    for (const { fail } of this.#waiting.values()) fail(refusal);
    this.#waiting.clear();
  }
}

let running: Beside | undefined;

/** In the thread where the build has its program, as a server's has; else (in tests) at once. */
export async function beside<K extends Kind>(kind: K, given: GivenFor<K>): Promise<MadeBy<K>> {
  const program = process.env.FELTFOOT_BESIDE;
  if (!program) return madeIn<K>(answerTo({ kind, given }));
  running ??= new Beside(() => new Worker(program));
  return running.ask(kind, given);
}
