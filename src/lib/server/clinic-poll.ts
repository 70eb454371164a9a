import { makePoll, type AskedRound, type Poll } from '../compute/jobs/poll';
import { PARALLELS } from './clinic-parallel';
import { serverCompute } from './compute';
import type { Account } from './fair-queue';
import { Refusal } from './faults';
import type { Round } from '../wire';

/** What a round has a room vote on; null where it asks nothing. */
export function askedIn(round: Round): AskedRound | null {
  if (round.kind === 'predict') {
    const { kind, lesson, section } = round;
    return { kind, lesson, section };
  }
  if (round.kind !== 'ask') return null;
  const { kind, lesson, item, seed } = round;
  return { kind, lesson, item, seed, hint: PARALLELS[lesson]?.hint ?? null };
}

/** Polls of questions, run through the model once. Seeds are few, so that this stays small. */
export class Polls {
  readonly #made = new Map<string, Poll>();
  /** Being worked out: a room's screen asks for it while its opening does. */
  readonly #making = new Map<string, Promise<void>>();

  /** @param ask has one worked out off the server's own thread */
  constructor(
    private readonly make: (round: AskedRound) => Poll,
    private readonly ask: (kind: 'poll', round: AskedRound, account: Account) => Promise<Poll>
  ) {}

  of(round: Round): Poll {
    const asked = askedIn(round);
    if (!asked) throw new Refusal(422, 'This round asks nothing.');
    const name = JSON.stringify(asked);
    const poll = this.#made.get(name) ?? this.make(asked);
    this.#made.set(name, poll);
    return poll;
  }

  /** One by one, so that other work has its turn between them. */
  async prepare(plan: readonly Round[], account: Account): Promise<void> {
    for (const round of plan) await this.#prepareOne(round, account);
  }

  #prepareOne(round: Round, account: Account): Promise<void> | undefined {
    const asked = askedIn(round);
    const name = JSON.stringify(asked);
    if (!asked || this.#made.has(name)) return;
    const making = this.#making.get(name) ?? this.#workOut(round, asked, name, account);
    this.#making.set(name, making);
    return making;
  }

  async #workOut(round: Round, asked: AskedRound, name: string, account: Account): Promise<void> {
    try {
      this.#made.set(name, await this.ask('poll', asked, account));
    } catch {
      // The thread has too much in hand, or there is none: then here, after all who wait.
      await new Promise((next) => setImmediate(next));
      this.of(round);
    } finally {
      this.#making.delete(name);
    }
  }
}

const polls = new Polls(makePoll, serverCompute);

/** The question of a round, worked out now if it was not before. Refuses where it asks none. */
export const pollOf = (round: Round): Poll => polls.of(round);

/** Has a plan's questions worked out, so that no room waits for the model later, nor another now. */
export const prepare = (plan: readonly Round[], account: Account): Promise<void> =>
  polls.prepare(plan, account);
