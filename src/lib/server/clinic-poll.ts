import { beside } from './beside';
import { makePoll, type AskedRound, type Poll } from './clinic-poll-maker';
import { Refusal } from './faults';
import type { Round } from '../wire';

const nameOf = (round: Round) => JSON.stringify({ ...round, minutes: 0 });
const isAsked = (round: Round): round is AskedRound =>
  round.kind === 'predict' || round.kind === 'ask';

/** Polls of questions, run through the model once. Seeds are few, so that this stays small. */
export class Polls {
  readonly #made = new Map<string, Poll>();

  /** @param ask has one worked out beside the server */
  constructor(
    private readonly make: (round: AskedRound) => Poll,
    private readonly ask: (kind: 'poll', round: AskedRound) => Promise<Poll>
  ) {}

  of(round: Round): Poll {
    if (!isAsked(round)) throw new Refusal(422, 'This round asks nothing.');
    const name = nameOf(round);
    const poll = this.#made.get(name) ?? this.make(round);
    this.#made.set(name, poll);
    return poll;
  }

  /** One by one, so that other work has its turn between them. */
  async prepare(plan: readonly Round[]): Promise<void> {
    for (const round of plan.filter(isAsked)) {
      if (!this.#made.has(nameOf(round))) await this.#prepareOne(round);
    }
  }

  async #prepareOne(round: AskedRound): Promise<void> {
    try {
      this.#made.set(nameOf(round), await this.ask('poll', round));
    } catch {
      // The thread has too much in hand, or there is none: then here, after all who wait.
      await new Promise((next) => setImmediate(next));
      this.of(round);
    }
  }
}

const polls = new Polls(makePoll, beside);

/** The question of a round, worked out now if it was not before. Refuses where it asks none. */
export const pollOf = (round: Round): Poll => polls.of(round);

/** Has a plan's questions worked out, so that no room waits for the model later, nor another now. */
export const prepare = (plan: readonly Round[]): Promise<void> => polls.prepare(plan);
