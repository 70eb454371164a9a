import type { Prediction, Report, StoredAnswer, StoredTry } from '$lib/practice';
import { gradeTry, type Challenge } from '$lib/scoring';
import type { PhoneView } from '$lib/server/clinic-view';
import { ask, Refused, wordsFor } from '../guide/ask';
import { newId, now } from '../record/stamp';
import { follow } from './follow';
import { foretold } from './foretold';
import { homeLink, storedAnswer, type Reports } from './home/home-link';
import { toldIn, type Told } from './told';

/** The place of a phone, kept so that it has it again after a reload. */
interface Place {
  code: string;
  token: string;
  /** What was answered, by part: the option, or the last try's id. */
  votes: Record<string, string>;
  /** How its owner came by the answers to questions of the bank, by round. */
  reports?: Reports;
  /** Answers to questions of the bank that were told right or wrong, by round. */
  told?: Readonly<Record<string, Told>>;
}

type Answer = { kind: 'vote'; id: string; part: string; option: string };
type TryAnswer = {
  kind: 'try';
  id: string;
  part: string;
  input: StoredTry['input'];
  model: string;
  marks: number;
};

const KEY = 'feltfoot-seat';
const RETRY_MS = 3000;
/** No such room, or it is over and this phone was not in it. */
const GONE = [404, 410];

/** A phone in a clinic. What it answers is sent until it is acknowledged or the round is closed. */
export class Seat {
  view = $state.raw<PhoneView | null>(null);
  place = $state.raw<Place | null>(null);
  tries = $state.raw<(StoredTry & { part: string })[]>([]);
  isConnected = $state(true);
  /** Whether what was answered here was just deleted. */
  isForgotten = $state(false);
  trouble = $state('');
  unsent = $state.raw<(Answer | TryAnswer)[]>([]);

  /** A vote that can be changed no more. */
  onforetold: (made: Prediction) => void = () => {};
  /** An answer to a question of the bank, with how it was come by. */
  onanswered: (made: StoredAnswer) => void = () => {};

  #stop = () => {};
  #isSending = false;

  /** Takes the seat that this browser has, if any. @returns how to stop */
  open(code: string | null): () => void {
    const kept = readPlace(localStorage.getItem(KEY));
    if (kept && (!code || kept.code === code)) void this.#enter(kept);
    else if (code) void this.join(code);
    const timer = setInterval(() => void this.#send(), RETRY_MS);
    return () => {
      clearInterval(timer);
      this.#stop();
    };
  }

  join(code: string): Promise<void> {
    return this.#enter({ code, token: newId() + newId(), votes: {} });
  }

  async #enter(place: Place): Promise<void> {
    const path = `/api/clinic/${place.code}`;
    try {
      const view = await ask<PhoneView>('POST', `${path}/join`, { token: place.token });
      this.#keep(place);
      this.#show(view);
      this.trouble = '';
      this.isForgotten = false;
      this.#stop();
      this.#stop = follow<PhoneView>(
        `${path}/feed`,
        (view) => this.#show(view),
        (isConnected) => (this.isConnected = isConnected)
      );
    } catch (error) {
      this.trouble = wordsFor(error);
      if (error instanceof Refused && GONE.includes(error.status)) this.leave();
    }
  }

  #show(view: PhoneView): void {
    const told = foretold(this.view, view, this.place?.votes ?? {});
    this.view = view;
    this.#keepTold(view);
    for (const one of told) this.onforetold({ ...one, at: now() });
  }

  #keepTold(view: PhoneView): void {
    const { place } = this;
    if (!place || this.hasTold(view.at)) return;
    const told = toldIn(view, place.votes, now());
    if (told) this.#keep({ ...place, told: { ...place.told, [view.at]: told } });
  }

  /** What stands behind the # of the link that brings this phone's results elsewhere. */
  get homeLink(): string {
    return this.place ? homeLink(this.place) : '';
  }

  /** Whether the answer of this round was told. */
  hasTold(round: number): boolean {
    return this.place?.told?.[round] !== undefined;
  }

  isWaiting(round: number): boolean {
    return this.hasTold(round) && this.place?.reports?.[round] === undefined;
  }

  /** Answers of which is not said yet how they were come by. */
  get waiting(): Told[] {
    return Object.values(this.place?.told ?? {}).filter(({ made }) => this.isWaiting(made.round));
  }

  /** Its owner says so: the answer then goes into the record. */
  says(round: number, report: Report): void {
    const { place } = this;
    const told = place?.told?.[round];
    if (!place || !told || !this.isWaiting(round)) return;
    this.#keep({ ...place, reports: { ...place.reports, [round]: report } });
    this.onanswered(storedAnswer(place.code, told.made, report));
  }

  get hasAnswered(): boolean {
    return Object.keys(this.place?.votes ?? {}).length > 0;
  }

  #keep(place: Place): void {
    this.place = place;
    localStorage.setItem(KEY, JSON.stringify(place));
  }

  leave(): void {
    this.#stop();
    localStorage.removeItem(KEY);
    this.place = null;
    this.view = null;
    this.tries = [];
    this.unsent = [];
  }

  /** Deletes at the server what was answered here. The record on this phone keeps what it has. */
  async forget(): Promise<void> {
    if (!this.place) return;
    const { code, token } = this.place;
    try {
      await ask('POST', `/api/clinic/${code}/forget`, { token });
      this.trouble = '';
      this.isForgotten = true;
      this.leave();
    } catch (error) {
      this.trouble = wordsFor(error);
    }
  }

  vote(part: string, option: string): void {
    if (!this.place) return;
    this.#note(part, option);
    this.#queue({ kind: 'vote', id: newId(), part, option });
  }

  /** A try as the record keeps it: under the same id, so that it is one try wherever it comes to. */
  tried(part: string, challenge: Challenge, made: StoredTry): void {
    const { grade } = gradeTry(challenge, made.input);
    this.tries = [...this.tries, { ...made, part }];
    const { id, input, model } = made;
    this.#note(part, id);
    this.#queue({ kind: 'try', id, part, input, model, marks: grade.marks });
  }

  #note(part: string, answer: string): void {
    if (this.place) this.#keep({ ...this.place, votes: { ...this.place.votes, [part]: answer } });
  }

  #queue(answer: Answer | TryAnswer): void {
    this.unsent = [...this.unsent, answer];
    void this.#send();
  }

  async #send(): Promise<void> {
    if (this.#isSending || !this.place) return;
    this.#isSending = true;
    const { code, token } = this.place;
    try {
      while (this.unsent.length > 0) {
        await ask('POST', `/api/clinic/${code}/answer`, { token, answer: this.unsent[0] });
        if (this.place?.token !== token) return;
        this.unsent = this.unsent.slice(1);
        this.trouble = '';
      }
    } catch (error) {
      // Of a room that was left meanwhile nothing is said any more.
      if (this.place?.token === token) this.#failed(error);
    } finally {
      this.#isSending = false;
    }
  }

  /** What was refused is not sent again; what did not get through is. */
  #failed(error: unknown): void {
    if (!(error instanceof Refused) || error.status === 429 || error.status >= 500) return;
    this.unsent = this.unsent.slice(1);
    this.trouble = wordsFor(error);
  }
}

function readPlace(text: string | null): Place | null {
  try {
    const { code, token, votes, reports, told } = JSON.parse(text ?? '');
    return {
      code: String(code),
      token: String(token),
      votes: votes ?? {},
      reports: reports ?? {},
      told: told ?? {}
    };
  } catch {
    return null;
  }
}
