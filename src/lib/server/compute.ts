import { createHash } from 'node:crypto';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import {
  Asker,
  BrokeOff,
  costOf,
  inPagePort,
  type GivenTo,
  type HostPort,
  type JobName,
  type MadeBy
} from '../compute';
import { FairQueue, type Account } from './fair-queue';
import { Refusal } from './faults';
import { describeError, log } from './log';
import { processor_s, workDeadline } from './work-deadline';

/** What is needed of a thread. */
export type Thread = Pick<Worker, 'on' | 'postMessage' | 'unref' | 'terminate'>;

/** Work that waits for one thread at most, s: the tries of a full room that all come at once. */
const MOST_WAITING_S = 90;
/** Nobody is left hanging for longer, s: who hears 503 asks again, and a phone does so by itself. */
const PATIENCE_S = 30;
/**
 * A piece of work is broken off after this and so many times what it may cost, s of processor. Shorter, and
 * honest tries are refused; longer, and one that takes for ever holds up the others for that long.
 */
const DEADLINE_S = 5;
const DEADLINE_COSTS = 10;
/** What a machine had no time for is asked for again after this, s. */
const LATER_S = 60;
/** What overran is not tried again; more than this many are forgotten, oldest first. */
const MOST_OVERRAN = 1000;
/** One core is for answering; more threads than this wait for the store and not for the model. */
const MOST_THREADS = 8;
/** Where there is no thread, requests get their turn this often, ms. */
const SLICE_MS = 10;

/** The end of a thread that does not keep the server up. */
export function threadPort(thread: Thread): HostPort {
  // A server that is told to stop does not wait for it.
  thread.unref();
  thread.on('error', (error) => log('the compute thread broke off', describeError(error)));
  return {
    post: (asked) => thread.postMessage(asked),
    onmessage: (hear) => thread.on('message', hear),
    onend: (ended) => thread.on('exit', ended),
    close: () => void thread.terminate()
  };
}

/** A piece of work that somebody waits for. */
interface Piece {
  job: JobName;
  given: unknown;
  cost_s: number;
  done: (made: unknown) => void;
  fail: (error: unknown) => void;
  patience?: NodeJS.Timeout;
}

/** How it stands with those who work things out, for whoever watches the server. */
export interface ComputeState {
  threads: number;
  busy: number;
  waiting: number;
  /** How long the oldest of what is being worked out has taken, s. */
  longest_s: number;
}

const now_s = () => performance.now() / 1000;

/** Shares a few threads among all who ask, so that nobody's work keeps another's waiting for long. */
export class ServerCompute {
  readonly #idle: Asker[];
  readonly #begun = new Map<Asker, number>();
  readonly #overran = new Set<string>();
  readonly #queue: FairQueue<Piece>;

  constructor(
    open: () => HostPort,
    private readonly threads = 1,
    private readonly had_s = processor_s
  ) {
    // Not begun anew: what breaks a thread off once would do so again, and whoever asked keeps it.
    const asker = () => new Asker([open], 0);
    this.#idle = Array.from({ length: threads }, asker);
    this.#queue = new FairQueue(MOST_WAITING_S * threads);
  }

  /** Throws DataError or ScenarioError for what was wrong with what was given, Refusal for too much. */
  async ask<Name extends JobName>(
    job: Name,
    given: GivenTo<Name>,
    account: Account
  ): Promise<MadeBy<Name>> {
    if (this.#overran.size > 0 && this.#overran.has(nameOf(job, given))) throw endless();
    const cost_s = costOf(job, given);
    const made = new Promise((done, fail) => {
      const piece: Piece = { job, given, cost_s, done, fail };
      piece.patience = setTimeout(() => this.#giveUp(piece), PATIENCE_S * 1000).unref();
      for (const out of this.#queue.put(account, cost_s, piece, now_s())) this.#giveUp(out);
      this.#begin();
    });
    return made as Promise<MadeBy<Name>>;
  }

  get state(): ComputeState {
    const longest_s = Math.max(0, ...[...this.#begun.values()].map((from_s) => now_s() - from_s));
    const { threads } = this;
    return { threads, busy: this.#begun.size, waiting: this.#queue.length, longest_s };
  }

  #giveUp(piece: Piece): void {
    clearTimeout(piece.patience);
    this.#queue.remove(piece);
    const wait_s = Math.ceil(this.#queue.waiting_s / this.threads);
    piece.fail(busy('Too busy right now.', Math.min(60, Math.max(1, wait_s))));
  }

  #begin(): void {
    while (this.#idle.length > 0) {
      const next = this.#queue.take(now_s());
      if (!next) return;
      const asker = this.#idle.pop() as Asker;
      clearTimeout(next.work.patience);
      void this.#workOut(asker, next.work).then((took_s) => {
        this.#queue.charge(next.account, took_s - next.cost_s, now_s());
        this.#idle.push(asker);
        this.#begin();
      });
    }
  }

  /** @returns how long it took, s */
  async #workOut(asker: Asker, { job, given, cost_s, done, fail }: Piece): Promise<number> {
    const from_s = now_s();
    this.#begun.set(asker, from_s);
    const stop = new AbortController();
    const allowed_s = DEADLINE_S + DEADLINE_COSTS * cost_s;
    const clear = workDeadline({
      allowed_s,
      patience_s: allowed_s + PATIENCE_S,
      had_s: this.had_s,
      late: (why) => {
        log(`work ${why}`, { job });
        if (why === 'overran') this.#remember(nameOf(job, given));
        stop.abort(why === 'overran' ? endless() : busy('Too busy right now.', LATER_S));
        // The thread may be where it hears nothing; the next piece gets a new one.
        asker.close();
      }
    });
    try {
      done(await asker.ask(job, given as GivenTo<typeof job>, { signal: stop.signal }));
    } catch (error) {
      fail(error instanceof BrokeOff ? busy('That got cut off.', 5) : error);
    }
    clear();
    this.#begun.delete(asker);
    return now_s() - from_s;
  }

  #remember(name: string): void {
    this.#overran.add(name);
    if (this.#overran.size <= MOST_OVERRAN) return;
    for (const oldest of this.#overran) return void this.#overran.delete(oldest);
  }
}

const nameOf = (job: JobName, given: unknown) =>
  createHash('sha256')
    .update(JSON.stringify([job, given]))
    .digest('base64url');

/** What a phone hears when its try cannot be worked out now: it keeps it and sends it again. */
const busy = (what: string, retryAfter_s: number) =>
  new Refusal(503, `${what} Nothing was saved; try again later.`, retryAfter_s);

/** And when it never can: sent again it would only hold up others. */
const endless = () => new Refusal(422, 'This takes too long to run. It wasn’t saved.');

/** In a thread where the build has its program, as a server's has; else between two requests. */
function open(): HostPort {
  const program = process.env.FELTFOOT_COMPUTE;
  if (program) return threadPort(new Worker(program));
  return inPagePort({
    slice_ms: SLICE_MS,
    breathe: () => new Promise((next) => setImmediate(next))
  });
}

const threads = Math.min(MOST_THREADS, Math.max(1, availableParallelism() - 1));
const running = new ServerCompute(open, threads);

/** Has a job done off the server's own thread, see compute/jobs.ts. */
export const serverCompute: ServerCompute['ask'] = (job, given, account) =>
  running.ask(job, given, account);

export const computeState = (): ComputeState => running.state;
