import { MODEL_VERSION } from '$lib/model';
import { keptGuess } from '$lib/practice';
import type { Challenge, Guess } from '$lib/scoring';
import { forgetWayBack } from './way-back';
import { newId, now } from '$lib/app/record';
import { ask, Refused, wordsFor } from '$lib/app/connection';
import { tryRuns } from '$lib/app/try';
import { deliver } from './deliver';
import { Shelf, type Home, type Parcel } from './shelf';
import { toldFrom, type Answered } from './told';
import { clientView, type HomeworkSubmission, type StoredAnswer, type StoredTry } from '$lib/wire';

/** Tries again this often while something waits, ms. */
const RETRY_MS = 20_000;
/** The server had this phone and has it no more. */
const GONE = 410;

/** Homework on a client's phone: shows at once what is kept here, and sends what waits when it can. */
export class Phone {
  homes = $state.raw<Home[]>([]);
  home = $state.raw<Home | null>(null);
  parcels = $state.raw<Parcel[]>([]);
  isReady = $state(false);
  /** Whether a homework was just deleted. */
  isForgotten = $state(false);
  trouble = $state('');
  /** Whether the server has this phone no more. */
  isUnknown = $state(false);

  #shelf: Shelf | null = null;
  #queue: Promise<void> = Promise.resolve();

  get waiting(): number {
    return this.parcels.filter(({ state }) => state === 'waiting').length;
  }

  /** @param share secret of the link, or null to go on with the last homework. @returns how to stop */
  open(share: string | null): () => void {
    this.#queue = this.#openShelf(share);
    const again = () => void this.sync();
    addEventListener('online', again);
    const seen = () => document.visibilityState === 'visible' && again();
    document.addEventListener('visibilitychange', seen);
    const timer = setInterval(() => this.waiting > 0 && again(), RETRY_MS);
    return () => {
      removeEventListener('online', again);
      document.removeEventListener('visibilitychange', seen);
      clearInterval(timer);
      void this.#queue.then(() => this.#shelf?.close());
    };
  }

  async #openShelf(share: string | null): Promise<void> {
    try {
      this.#shelf = await Shelf.open();
      this.homes = await this.#shelf.homes();
      const home = this.homes.find((one) => one.share === share) ?? (share ? null : this.homes[0]);
      if (home) await this.choose(home);
    } catch {
      this.trouble = 'This browser keeps nothing, so homework cannot be done here.';
    }
    this.isReady = true;
    void this.sync();
  }

  async choose(home: Home): Promise<void> {
    this.home = { ...home, opened: now() };
    await this.#shelf?.keepHome(this.home);
    this.parcels = (await this.#shelf?.parcels(home.share)) ?? [];
  }

  /** The first time: gives the name under which the guide sees this phone. */
  async enter(share: string, name: string): Promise<void> {
    this.isForgotten = false;
    const token = newId() + newId();
    await this.choose({ share, token, name, told: null, opened: now() });
    await this.sync();
  }

  /** Keeps it here first, then sends it. */
  async done(sent: HomeworkSubmission): Promise<void> {
    if (!this.home || !this.#shelf) return;
    const parcel: Parcel = { share: this.home.share, sent, state: 'waiting' };
    await this.#shelf.keepParcel(parcel);
    this.parcels = [...this.parcels, parcel];
    await this.sync();
  }

  tried(challenge: Challenge, input: StoredTry['input'], guess: Guess | null): Promise<void> {
    const marks = tryRuns.of(challenge, { input })?.grade.marks ?? 0;
    const made = { challenge: challenge.id, input, marks, model: MODEL_VERSION };
    return this.done({ kind: 'try', id: newId(), at: now(), ...made, ...keptGuess(guess) });
  }

  answered(made: Omit<StoredAnswer, 'id' | 'at'>): Promise<void> {
    return this.done({ kind: 'answer', id: newId(), at: now(), ...made });
  }

  /** Hears what the guide says, and sends what waits. One at a time. */
  sync(): Promise<void> {
    this.#queue = this.#queue.then(() => this.#sync());
    return this.#queue;
  }

  /** Its owner wants to be there again: all that is kept here is sent anew. */
  async comeAgain(): Promise<void> {
    const anew = this.parcels.map(({ share, sent }): Parcel => ({ share, sent, state: 'waiting' }));
    for (const one of anew) await this.#shelf?.keepParcel(one);
    this.parcels = anew;
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
      await this.#hear(home, answered);
      const send = (sent: HomeworkSubmission) =>
        ask('POST', '/api/homework/send', { ...key, sent });
      const now = await deliver(this.parcels, send, async (one) => this.#shelf?.keepParcel(one));
      const made = this.parcels.slice(now.length);
      this.parcels = [...now, ...made];
      this.trouble = '';
    } catch (error) {
      this.isUnknown ||= wasThere && error instanceof Refused && error.status === GONE;
      this.trouble = error instanceof Refused || !home.told ? wordsFor(error) : '';
    }
  }

  async #hear(home: Home, answered: Answered): Promise<void> {
    this.home = { ...home, told: toldFrom(home.told, answered) };
    await this.#shelf?.keepHome($state.snapshot(this.home) as Home);
  }

  /** Deletes everything of this homework, there and here. */
  async forget(): Promise<void> {
    if (!this.home) return;
    const { share, token } = this.home;
    await ask('POST', '/api/homework/forget', { share, token });
    await this.#shelf?.forget(share);
    forgetWayBack(localStorage);
    this.home = null;
    this.parcels = [];
    this.homes = (await this.#shelf?.homes()) ?? [];
    this.isForgotten = true;
  }
}
