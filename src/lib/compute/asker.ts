import { JOBS, type GivenTo, type JobName, type MadeBy } from './jobs';
import { madeIn, type HostPort, type Told } from './messages';

/** Whoever was working it out broke off. */
export class BrokeOff extends Error {
  constructor() {
    super('working it out broke off');
    this.name = 'BrokeOff';
  }
}

export interface AskOptions {
  /** Aborted, the work is stopped and the promise rejects with the signal's reason. */
  signal?: AbortSignal;
  /** How much has been done, 0 to 1; the end is told by the promise. */
  onprogress?: (share: number) => void;
}

interface Waiting {
  job: JobName;
  given: unknown;
  left: number;
  settle: (told: Extract<Told, { kind: 'done' }>['outcome']) => void;
  fail: (error: Error) => void;
  onprogress?: (share: number) => void;
}

/** The last hundredth is told by the promise. */
const MOST_SHARE = 0.99;

/**
 * The asking side. It opens a port when there is something to do, opens another when that one broke off,
 * and goes over to the next kind of port when one ends before it ever did anything.
 */
export class Asker {
  #port: HostPort | null = null;
  #kind = 0;
  #hasHeard = false;
  #tickets = 0;
  readonly #waiting = new Map<number, Waiting>();

  constructor(
    private readonly kinds: readonly (() => HostPort)[],
    /** So often a piece of work is begun anew when whoever did it broke off. */
    private readonly again: number
  ) {}

  /** Throws DataError or ScenarioError for what was wrong with what was given, BrokeOff. */
  async ask<Name extends JobName>(
    job: Name,
    given: GivenTo<Name>,
    { signal, onprogress }: AskOptions = {}
  ): Promise<MadeBy<Name>> {
    signal?.throwIfAborted();
    const ticket = ++this.#tickets;
    // Asked first: what could not be asked is not in hand.
    this.#running().post({ kind: 'do', ticket, job, given });
    return new Promise((done, fail) => {
      const stop = () => {
        this.#port?.post({ kind: 'cancel', ticket });
        const wasWaiting = this.#waiting.delete(ticket);
        if (wasWaiting && JOBS[job].isWhole) this.#endWhole();
        fail(signal?.reason as Error);
      };
      signal?.addEventListener('abort', stop, { once: true });
      this.#waiting.set(ticket, {
        ...{ job, given, onprogress, left: this.again },
        fail,
        settle: (outcome) => {
          signal?.removeEventListener('abort', stop);
          try {
            done(madeIn(outcome) as MadeBy<Name>);
          } catch (error) {
            fail(error);
          }
        }
      });
    });
  }

  /** Ends whoever works; what waits fails. */
  close(): void {
    const port = this.#port;
    this.#port = null;
    port?.close();
    for (const one of this.#waiting.values()) one.fail(new BrokeOff());
    this.#waiting.clear();
  }

  #running(): HostPort {
    if (this.#port) return this.#port;
    const port = this.#open();
    this.#hasHeard = false;
    port.onmessage((told) => this.#hear(told));
    port.onend(() => this.#ended(port));
    return (this.#port = port);
  }

  #open(): HostPort {
    try {
      return this.kinds[this.#kind]();
    } catch (error) {
      if (!this.#hasOtherKind) throw error;
      this.#kind++;
      return this.#open();
    }
  }

  #hear(told: Told): void {
    this.#hasHeard = true;
    const one = this.#waiting.get(told.ticket);
    if (!one) return;
    if (told.kind === 'progress') {
      one.onprogress?.(Math.min(told.runs / JOBS[one.job].runs, MOST_SHARE));
    } else if (told.kind === 'done') {
      this.#waiting.delete(told.ticket);
      one.settle(told.outcome);
    } else if (this.#hasOtherKind) {
      this.#port?.close();
      this.#port = null;
      this.#kind++;
      this.#beginAgain();
    } else {
      this.#waiting.delete(told.ticket);
      one.fail(new Error(told.message));
    }
  }

  get #hasOtherKind(): boolean {
    return this.#kind < this.kinds.length - 1;
  }

  /** What is done in one go hears no cancel: its thread ends, and what else waits begins again. */
  #endWhole(): void {
    const port = this.#port;
    this.#port = null;
    port?.close();
    this.#beginAgain();
  }

  #beginAgain(): void {
    for (const [ticket, { job, given }] of this.#waiting) {
      this.#running().post({ kind: 'do', ticket, job, given });
    }
  }

  #ended(port: HostPort): void {
    if (this.#port !== port) return;
    this.#port = null;
    if (!this.#hasHeard && this.#hasOtherKind) this.#kind++;
    else for (const one of this.#waiting.values()) one.left--;
    for (const [ticket, one] of this.#waiting) {
      if (one.left < 0) {
        this.#waiting.delete(ticket);
        one.fail(new BrokeOff());
      }
    }
    this.#beginAgain();
  }
}
