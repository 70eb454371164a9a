import { Worker } from 'node:worker_threads';
import {
  Asker,
  BrokeOff,
  inPagePort,
  TooMuch,
  type GivenTo,
  type HostPort,
  type JobName,
  type MadeBy
} from '../compute';
import { Refusal } from './faults';
import { describeError, log } from './log';

/** What is needed of a thread. */
export type Thread = Pick<Worker, 'on' | 'postMessage' | 'unref' | 'terminate'>;

/** Work in hand at most, s: the tries of a full room that all come at once, ten seconds each. */
const MOST_WAITING_S = 60;
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

/** What a phone hears when its try or answer cannot be worked out now: it keeps it and sends it again. */
export class ServerCompute {
  readonly #asker: Asker;

  constructor(open: () => HostPort) {
    // Not begun anew: what breaks a thread off once would do so again, and whoever asked keeps it.
    this.#asker = new Asker([open], { most_s: MOST_WAITING_S, again: 0 });
  }

  /** Throws DataError or ScenarioError for what was wrong with what was given, Refusal for too much. */
  async ask<Name extends JobName>(job: Name, given: GivenTo<Name>): Promise<MadeBy<Name>> {
    try {
      return await this.#asker.ask(job, given);
    } catch (error) {
      throw refusalFor(error) ?? error;
    }
  }
}

function refusalFor(error: unknown): Refusal | null {
  if (error instanceof TooMuch) {
    return new Refusal(503, 'Too much to work out just now. Nothing was taken; try again later.');
  }
  if (error instanceof BrokeOff) {
    return new Refusal(503, 'Working it out broke off. Nothing was taken; try again later.');
  }
  return null;
}

/** In the thread where the build has its program, as a server's has; else between two requests. */
function open(): HostPort {
  const program = process.env.FELTFOOT_COMPUTE;
  if (program) return threadPort(new Worker(program));
  return inPagePort({
    slice_ms: SLICE_MS,
    breathe: () => new Promise((next) => setImmediate(next))
  });
}

const running = new ServerCompute(open);

/** Has a job done off the server's own thread, see compute/jobs.ts. */
export const serverCompute: ServerCompute['ask'] = (job, given) => running.ask(job, given);
