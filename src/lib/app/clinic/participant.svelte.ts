import type { Challenge } from '$lib/scoring';
import { ask, isPassing, Refused, RETRY_MS, wordsFor } from '$lib/connection';
import { newId, now } from '$lib/learner';
import { tryRuns } from '$lib/app/try';
import { followFeed } from './follow';
import { foretold } from './foretold';
import { homeLink, answerForRecord } from './home/home-link';
import {
  dropPlace,
  keepFirst,
  keepPlace,
  keptPlaces,
  newPlace,
  type Place,
  type RevealedAnswer,
  withAnswer,
  withRefused,
  withTaken
} from './place';
import { PlaceSender } from './place-sender';
import { revealedIn } from './revealed-answer';
import {
  type ClinicSubmission,
  joined,
  phoneView,
  type PhoneView,
  type Prediction,
  type Report,
  type StoredAnswer,
  type StoredTry
} from '$lib/wire';

/** No such room, or it is over and this phone was not in it. */
const GONE = [404, 410];
/** A phone in a clinic. What it answers is sent until it is acknowledged or the round is closed. */
export class Participant {
  view = $state.raw<PhoneView | null>(null);
  place = $state.raw<Place | null>(null);
  /** A place that this phone has, or wants, and could not be given just now. */
  coming = $state.raw<Place | null>(null);
  tries = $state.raw<(StoredTry & { part: string })[]>([]);
  isConnected = $state(true);
  /** Whether what was answered here was just deleted. */
  isForgotten = $state(false);
  trouble = $state('');
  /** Places that this phone has in other clinics. */
  others = $state.raw<readonly Place[]>([]);

  /** A vote that can be changed no more. */
  onforetold: (made: Prediction) => void = () => {};
  /** An answer to a question of the bank, with how it was come by. */
  onanswered: (made: StoredAnswer) => void = () => {};

  #stop = () => {};
  #joining = '';
  #isForgetting = false;
  readonly #sender = new PlaceSender({
    tokens: () => [this.place, ...this.others].flatMap((one) => one?.token ?? []),
    placeOf: (token) => (this.#isForgetting ? undefined : this.#placeOf(token)),
    isStaying: (token) => this.#isStaying(token),
    settle: (...settled) => this.#settle(...settled)
  });

  /** Takes the seat that this browser has, if any. @returns how to stop */
  open(code: string | null): () => void {
    const [last] = keptPlaces(localStorage);
    if (code) void this.join(code);
    else if (last) void this.#enter(last);
    const timer = setInterval(() => {
      if (this.coming) void this.#enter(this.coming);
      void this.#sender.send();
    }, RETRY_MS.clinic);
    return () => {
      clearInterval(timer);
      this.#stop();
    };
  }

  /** Comes into a clinic, or back to its seat there; places in others are kept. */
  async join(code: string): Promise<void> {
    // A second tap while the first is under way.
    if (this.#joining === code || (this.view && this.place?.code === code)) return;
    this.#joining = code;
    const kept = keptPlaces(localStorage).find((one) => one.code === code);
    await this.#enter(kept ?? newPlace(code, newId() + newId()));
    this.#joining = '';
  }

  /** Another code is to be typed instead. */
  comeNoMore(): void {
    this.coming = null;
    this.trouble = '';
  }

  async #enter(place: Place): Promise<void> {
    const path = `/api/clinic/${place.code}`;
    const isAgain = this.coming === place;
    try {
      const entered = await ask('POST', `${path}/join`, { token: place.token }, joined);
      const { seat, ...view } = entered;
      // Meanwhile another code was wanted.
      if (isAgain && this.coming !== place) return;
      this.coming = null;
      this.view = null;
      this.tries = [];
      this.place = { ...(this.#placeOf(place.token) ?? place), name: view.name };
      keepFirst(localStorage, this.place);
      this.#listOthers();
      this.#show(view);
      this.trouble = '';
      this.isForgotten = false;
      this.#stop();
      this.#stop = followFeed(
        `${path}/feed?seat=${seat}`,
        phoneView,
        (view) => this.#show(view),
        (isConnected) => (this.isConnected = isConnected)
      );
      void this.#sender.send();
    } catch (error) {
      this.coming = isPassing(error) ? place : null;
      this.trouble = error instanceof TypeError ? '' : wordsFor(error);
      if (error instanceof Refused && GONE.includes(error.status)) this.#drop(place);
    }
  }

  #listOthers(): void {
    const all = keptPlaces(localStorage);
    this.others = all.filter(({ token }) => token !== this.place?.token);
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
    const told = revealedIn(view, place.votes, now());
    if (told) this.#keep({ ...place, told: { ...place.told, [view.at]: told } });
  }

  /** What stands behind the # of the link that brings this phone's results elsewhere. */
  get homeLink(): string {
    return this.place ? homeLink(this.place) : '';
  }

  /** Whether the answer of this round was told. */
  hasTold(round: number): boolean {
    return this.place?.told[round] !== undefined;
  }

  isWaiting(round: number): boolean {
    return this.hasTold(round) && this.place?.reports[round] === undefined;
  }

  /** Answers of which is not said yet how they were come by. */
  get waiting(): RevealedAnswer[] {
    return Object.values(this.place?.told ?? {}).filter(({ made }) => this.isWaiting(made.round));
  }

  /** Its owner says so: the answer then goes into the record. */
  says(round: number, report: Report): void {
    const { place } = this;
    const told = place?.told[round];
    if (!place || !told || !this.isWaiting(round)) return;
    this.#keep({ ...place, reports: { ...place.reports, [round]: report } });
    this.onanswered(answerForRecord(place.code, told.made, report));
  }

  get hasAnswered(): boolean {
    return Object.keys(this.place?.votes ?? {}).length > 0;
  }

  #keep(place: Place): void {
    this.place = place;
    keepPlace(localStorage, place);
  }

  leave(): void {
    if (this.place) this.#drop(this.place);
  }

  #drop(place: Place): void {
    dropPlace(localStorage, place);
    this.#listOthers();
    if (this.place !== null && this.place.token !== place.token) return;
    this.#stop();
    this.place = null;
    this.coming = null;
    this.view = null;
    this.tries = [];
  }

  /** Deletes at the server what was answered here. The record on this phone keeps what it has. */
  async forget(): Promise<void> {
    if (!this.place) return;
    const { code, token } = this.place;
    this.#isForgetting = true;
    try {
      await ask('POST', `/api/clinic/${code}/forget`, { token });
      this.trouble = '';
      this.isForgotten = true;
      this.leave();
    } catch (error) {
      this.trouble = wordsFor(error);
    } finally {
      this.#isForgetting = false;
    }
  }

  vote(part: string, option: string): void {
    this.#answer({ kind: 'vote', id: newId(), part, option });
  }

  /** A try as the record keeps it: under the same id, so that it is one try wherever it comes to. */
  tried(part: string, challenge: Challenge, made: StoredTry): void {
    const marks = tryRuns.known(made)?.grade.marks ?? 0;
    this.tries = [...this.tries, { ...made, part }];
    const { id, input, model } = made;
    this.#answer({ kind: 'try', id, part, input, model, marks });
  }

  get unsent(): readonly ClinicSubmission[] {
    return this.place?.unsent ?? [];
  }

  /** Kept before it is sent: a phone that is reloaded in between sends it after. */
  #answer(answer: ClinicSubmission): void {
    if (!this.place) return;
    this.#keep(withAnswer(this.place, answer));
    void this.#sender.send();
  }

  #placeOf(token: string): Place | undefined {
    if (this.place?.token === token) return this.place;
    return this.others.find((one) => one.token === token);
  }

  /** Not where all was just deleted, here or in another window: a seat would bring it back. */
  #isStaying(token: string): boolean {
    return !this.#isForgetting && keptPlaces(localStorage).some((one) => one.token === token);
  }

  /** @param why it was refused; null where it was taken */
  #settle(token: string, answer: ClinicSubmission, why: string | null): void {
    const place = this.#placeOf(token);
    if (!place) return;
    const now = why === null ? withTaken(place, answer) : withRefused(place, answer, why);
    if (token === this.place?.token) this.#keep(now);
    else {
      keepPlace(localStorage, now);
      this.#listOthers();
    }
    // Of a clinic that is not the one in view, or of a round that was left, the status line says it.
    if (why !== null && answer.part !== this.view?.part) this.trouble = why;
    else if (why === null) this.trouble = '';
  }
}
