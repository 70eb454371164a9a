import { ask, deliver, type OutboxEntry, Refused } from '$lib/connection';
import type { ClinicSubmission } from '$lib/wire';
import type { Place } from './place';

/** The server does not know this seat. */
const NOT_ADMITTED = 403;

/** The places of a phone, by their tokens, as far as the sender needs them. */
export interface SendersPlaces {
  /** Of the clinic in view, then of the others. */
  tokens(): readonly string[];
  /** Undefined for one that sends nothing any more. */
  placeOf(token: string): Place | undefined;
  /** Whether a seat that the server lost is taken again. */
  isStaying(token: string): boolean;
  /** @param why it was refused; null where it was taken */
  settle(token: string, answer: ClinicSubmission, why: string | null): void;
}

/** Sends what waits in the places of a phone, one answer at a time. */
export class PlaceSender {
  #isSending = false;

  constructor(private readonly places: SendersPlaces) {}

  async send(): Promise<void> {
    if (this.#isSending) return;
    this.#isSending = true;
    for (const token of this.places.tokens()) await this.#sendOf(token);
    this.#isSending = false;
  }

  async #sendOf(token: string): Promise<void> {
    const { places } = this;
    const next = () => {
      const [sent] = places.placeOf(token)?.unsent ?? [];
      return sent && ({ sent, state: 'waiting' } as OutboxEntry<ClinicSubmission>);
    };
    const code = places.placeOf(token)?.code;
    if (!code) return;
    await deliver(
      next,
      (answer) => this.#sendOne(code, token, answer),
      ({ sent, state, why = '' }) => places.settle(token, sent, state === 'refused' ? why : null)
    );
  }

  async #sendOne(code: string, token: string, answer: ClinicSubmission): Promise<unknown> {
    const path = `/api/clinic/${code}`;
    const send = () => ask('POST', `${path}/answer`, { token, answer });
    try {
      return await send();
    } catch (error) {
      const isUnknown = error instanceof Refused && error.status === NOT_ADMITTED;
      if (!isUnknown || !this.places.isStaying(token)) throw error;
      // The store was put back as it was before this phone came in.
      await ask('POST', `${path}/join`, { token });
      return send();
    }
  }
}
