import { MODEL_VERSION } from '$lib/model';
import { keptGuess } from '$lib/practice';
import type { Challenge, Guess } from '$lib/scoring';
import { forgetWayBack } from './way-back';
import { newId, now } from '$lib/learner';
import { ask, deliver, isPassing, oneAtATime, Refused, RETRY_MS, wordsFor } from '$lib/connection';
import { gradedNow } from '$lib/app/try';
import { HomeworkStore, type HomeworkEntry, type KeptHomework } from './homework-store';
import { taskViewFrom } from './task-view';
import {
  clientView,
  type ClientView,
  type HomeworkSubmission,
  type LoggedDay,
  type StoredAnswer,
  type StoredTry
} from '$lib/wire';

/** The server had this phone and has it no more. */
const GONE = 410;

/** Homework on a client's phone: shows at once what is kept here, and sends what waits when it can. */
export class ClientPhone {
  homes = $state.raw<KeptHomework[]>([]);
  home = $state.raw<KeptHomework | null>(null);
  entries = $state.raw<HomeworkEntry[]>([]);
  isReady = $state(false);
  /** Whether a homework was just deleted. */
  isForgotten = $state(false);
  trouble = $state('');
  /** Whether the server has this phone no more. */
  isUnknown = $state(false);

  #store: HomeworkStore | null = null;
  #queue: Promise<void> = Promise.resolve();
  /** Whether the homework itself could not be had and may be next time. */
  #isAwaited = false;

  get waiting(): number {
    return this.entries.filter(({ state }) => state === 'waiting').length;
  }

  /** @param share secret of the link, or null to go on with the last homework. @returns how to stop */
  open(share: string | null): () => void {
    this.#queue = this.#openStore(share);
    const again = () => void this.sync();
    addEventListener('online', again);
    const seen = () => document.visibilityState === 'visible' && again();
    document.addEventListener('visibilitychange', seen);
    const timer = setInterval(
      () => (this.waiting > 0 || this.#isAwaited) && again(),
      RETRY_MS.homework
    );
    return () => {
      removeEventListener('online', again);
      document.removeEventListener('visibilitychange', seen);
      clearInterval(timer);
      void this.#queue.then(() => this.#store?.close());
    };
  }

  async #openStore(share: string | null): Promise<void> {
    try {
      this.#store = await HomeworkStore.open();
      this.homes = await this.#store.homes();
      const home = this.homes.find((one) => one.share === share) ?? (share ? null : this.homes[0]);
      if (home) await this.choose(home);
    } catch {
      this.trouble = 'This browser won’t save anything, so you can’t do homework here.';
    }
    this.isReady = true;
    void this.sync();
  }

  async choose(home: KeptHomework): Promise<void> {
    this.home = { ...home, opened: now() };
    await this.#store?.keepHome(this.home);
    this.entries = (await this.#store?.entries(home.share)) ?? [];
  }

  /** The first time: gives the name under which the guide sees this phone. */
  enter = oneAtATime(async (share: string, name: string): Promise<void> => {
    this.isForgotten = false;
    const token = newId() + newId();
    await this.choose({ share, token, name, told: null, opened: now() });
    await this.sync();
  });

  /** Keeps it here first, then sends it. */
  async done(sent: HomeworkSubmission): Promise<void> {
    if (!this.home || !this.#store) return;
    const entry: HomeworkEntry = { share: this.home.share, sent, state: 'waiting' };
    await this.#store.keepEntry(entry);
    this.entries = [...this.entries, entry];
    await this.sync();
  }

  tried(challenge: Challenge, input: StoredTry['input'], guess: Guess | null): Promise<void> {
    const said = keptGuess(guess);
    const marks = gradedNow(challenge, { input, ...said })?.grade.marks ?? 0;
    const made = { challenge: challenge.id, input, marks, model: MODEL_VERSION };
    return this.done({ kind: 'try', id: newId(), at: now(), ...made, ...said });
  }

  answered(made: Omit<StoredAnswer, 'id' | 'at'>): Promise<void> {
    return this.done({ kind: 'answer', id: newId(), at: now(), ...made });
  }

  /** Ten drags on the lawn, measured with a tape. */
  onLawn(moved_m: number[]): Promise<void> {
    return this.done({ kind: 'lawn', id: newId(), at: now(), moved_m });
  }

  /** A day of the own log. */
  addsDay({ on, spells, at }: LoggedDay): Promise<void> {
    return this.done({ kind: 'log', id: newId(), at, on, spells });
  }

  /** A word to the guide. */
  says(text: string): Promise<void> {
    return this.done({ kind: 'word', id: newId(), at: now(), text });
  }

  /** Hears what the guide says, and sends what waits. One at a time. */
  sync(): Promise<void> {
    this.#queue = this.#queue.then(() => this.#sync());
    return this.#queue;
  }

  /** Its owner wants to be there again: all that is kept here is sent anew. */
  async comeAgain(): Promise<void> {
    const anew = this.entries.map(({ share, sent }): HomeworkEntry => ({
      share,
      sent,
      state: 'waiting'
    }));
    for (const one of anew) await this.#store?.keepEntry(one);
    this.entries = anew;
    this.#queue = this.#queue.then(() => this.#sync(false));
    await this.#queue;
  }

  /** @param isBack whether this phone must have been there before: nobody comes back unasked */
  async #sync(isBack = true): Promise<void> {
    const { home } = this;
    if (!home) return;
    const key = { share: home.share, token: home.token };
    const wasThere = isBack && home.told !== null;
    try {
      const entering = { ...key, name: home.name, isBack: wasThere };
      const answered = await ask('POST', '/api/homework/enter', entering, clientView);
      this.isUnknown = false;
      this.#isAwaited = false;
      await this.#hear(home, answered);
      const send = (sent: HomeworkSubmission) =>
        ask('POST', '/api/homework/send', { ...key, sent });
      const next = () => this.entries.find(({ state }) => state === 'waiting');
      await deliver(next, send, (entry) => this.#settle(entry));
      this.trouble = '';
    } catch (error) {
      this.#isAwaited = !home.told && isPassing(error);
      this.isUnknown ||= wasThere && error instanceof Refused && error.status === GONE;
      this.trouble = error instanceof Refused || !home.told ? wordsFor(error) : '';
    }
  }

  async #settle(entry: HomeworkEntry): Promise<void> {
    this.entries = this.entries.map((one) => (one.sent.id === entry.sent.id ? entry : one));
    await this.#store?.keepEntry(entry);
  }

  async #hear(home: KeptHomework, answered: ClientView): Promise<void> {
    this.home = { ...home, told: taskViewFrom(home.told, answered) };
    await this.#store?.keepHome($state.snapshot(this.home) as KeptHomework);
  }

  /** Deletes everything of this homework, there and here. */
  async forget(): Promise<void> {
    if (!this.home) return;
    const { share, token } = this.home;
    await ask('POST', '/api/homework/forget', { share, token });
    await this.#store?.forget(share);
    forgetWayBack(localStorage);
    this.home = null;
    this.entries = [];
    this.homes = (await this.#store?.homes()) ?? [];
    this.isForgotten = true;
  }
}
