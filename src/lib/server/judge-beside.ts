import { Worker } from 'node:worker_threads';
import { Refusal } from './faults';
import { answerTo, verdictIn, type Answer, type Question, type Verdict } from './judging';
import { describeError, log } from './log';

/** What is needed of a thread. */
export type Thread = Pick<Worker, 'on' | 'postMessage' | 'unref' | 'terminate'>;

/** Answers in hand at most: half a minute of work where every question is new. */
const MOST_WAITING = 60;

interface Waiting {
  done: (answer: Answer) => void;
  fail: (refusal: Refusal) => void;
}

/**
 * Judges in a thread of its own, one answer after the other, so that a room's votes and tries do not
 * stand still meanwhile. What it refuses as too much a phone keeps and sends again.
 */
export class JudgeBeside {
  #thread: Thread | null = null;
  #waiting = new Map<number, Waiting>();
  #asked = 0;

  constructor(private readonly start: () => Thread) {}

  async judge(question: Question): Promise<Verdict> {
    if (this.#waiting.size >= MOST_WAITING) {
      throw new Refusal(503, 'Too much to judge just now. Nothing was taken; try again later.');
    }
    const ticket = ++this.#asked;
    const answer = await new Promise<Answer>((done, fail) => {
      this.#waiting.set(ticket, { done, fail });
      this.#running().postMessage({ ticket, question });
    });
    return verdictIn(answer);
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
    thread.on('error', (error) => log('judging broke off', describeError(error)));
    thread.on('exit', () => this.#ended(thread));
    return (this.#thread = thread);
  }

  /** The next answer starts another one. */
  #ended(thread: Thread): void {
    if (this.#thread !== thread) return;
    this.#thread = null;
    const refusal = new Refusal(503, 'Judging broke off. Nothing was taken; try again later.');
    for (const { fail } of this.#waiting.values()) fail(refusal);
    this.#waiting.clear();
  }
}

let beside: JudgeBeside | undefined;

/** Beside the server where the build has the thread's program, as it has; else (in tests) at once. */
export async function judge(question: Question): Promise<Verdict> {
  const program = process.env.FELTFOOT_JUDGE;
  if (!program) return verdictIn(answerTo(question));
  beside ??= new JudgeBeside(() => new Worker(program));
  return beside.judge(question);
}
