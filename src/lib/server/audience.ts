import { Throttle } from './throttle';

/** Listeners of a room hear at most this often, ms: a room that votes at once is one message. */
const BATCH_MS = 200;
/** The first change after a quiet time waits only for those that come with it, ms. */
const GATHER_MS = 25;
/** A listener that has not read this much is gone or too slow; it reconnects by itself. */
const MOST_UNREAD = -64;

/** Makes what a listener is shown now; the same text twice is sent once. */
export type ViewMaker = () => Promise<unknown>;

/** What a listener who had to show a key needs to go on. */
export interface Keyed {
  space: string;
  /** Whether the key still opens. */
  holds: () => Promise<boolean>;
}

/** Who wants to listen. */
export interface FeedRequest {
  /** Those with the same key see the same, so that it is computed once for all of them. */
  key: string;
  view: ViewMaker;
  /** The address that it counts for. */
  from: string;
  /** The seat that it is the feed of, if of any. */
  seat?: string | null;
  /** One that had to show a key is looked after at every heartbeat. */
  keyed?: Keyed;
}

type Controller = ReadableStreamDefaultController<Uint8Array>;
const encoder = new TextEncoder();

export class Listener {
  #last = '';
  #pending = 0;
  #turn: Promise<void> = Promise.resolve();
  readonly key: string;
  readonly from: string;
  readonly seat: string | null;
  readonly keyed: Keyed | undefined;

  constructor(
    { key, from, seat = null, keyed }: FeedRequest,
    /** What all with this key see now. */
    readonly view: () => Promise<string>,
    private readonly controller: Controller
  ) {
    this.key = key;
    this.from = from;
    this.seat = seat;
    this.keyed = keyed;
  }

  /**
   * One after the other: an older view never comes after a newer one.
   * @param seen what was just seen; where another is on its way, that may be newer, and it is looked anew
   */
  show(seen?: string): Promise<void> {
    const known = this.#pending === 0 ? seen : undefined;
    this.#pending++;
    this.#turn = this.#turn
      .then(() => this.#show(known))
      .catch(() => {})
      .finally(() => this.#pending--);
    return this.#turn;
  }

  /** Whether this is what it was shown last, and nothing is on its way. */
  hasSeen(text: string): boolean {
    return this.#pending === 0 && this.#last === text;
  }

  async #show(known?: string): Promise<void> {
    const text = known ?? (await this.view());
    if (text !== this.#last) this.write(`data: ${text}\n\n`);
    this.#last = text;
  }

  /** @returns false when the listener is to be dropped */
  write(text: string): boolean {
    try {
      if ((this.controller.desiredSize ?? MOST_UNREAD) <= MOST_UNREAD) return false;
      this.controller.enqueue(encoder.encode(text));
      return true;
    } catch {
      return false;
    }
  }

  end(): void {
    try {
      this.controller.close();
    } catch {
      // The other side was faster.
    }
  }
}

const placeOf = (key: string, seat: string | null) => JSON.stringify([key, seat]);

/** All who listen to one room at this node. */
export class Audience {
  readonly listeners = new Set<Listener>();
  /** The same by key and seat: each of two thousand phones that come looks for its own alone. */
  readonly #places = new Map<string, Set<Listener>>();
  readonly #views = new Map<string, Promise<string>>();
  readonly #pace = new Throttle(() => this.#showAll(), {
    gather_ms: GATHER_MS,
    every_ms: BATCH_MS
  });

  add(wanted: FeedRequest, controller: Controller): Listener {
    const { key, view } = wanted;
    const listener = new Listener(wanted, () => this.#viewOnce(key, view), controller);
    this.listeners.add(listener);
    const place = placeOf(key, listener.seat);
    this.#places.set(place, (this.#places.get(place) ?? new Set()).add(listener));
    return listener;
  }

  /** Who listens with the same key and seat, oldest first. */
  alike(key: string, seat: string | null): Listener[] {
    return [...(this.#places.get(placeOf(key, seat)) ?? [])];
  }

  drop(listener: Listener): void {
    this.listeners.delete(listener);
    const place = placeOf(listener.key, listener.seat);
    const left = this.#places.get(place);
    left?.delete(listener);
    if (left?.size === 0) this.#places.delete(place);
    listener.end();
    if (this.listeners.size === 0) this.#pace.stop();
  }

  /** What they see may be other than it was. */
  changed(): void {
    this.#pace.want();
  }

  end(): void {
    this.#pace.stop();
    for (const one of this.listeners) one.end();
  }

  async #showAll(): Promise<void> {
    // What is being made may be older than the change.
    this.#views.clear();
    const keys = new Map([...this.listeners].map((one) => [one.key, one] as const));
    await Promise.allSettled([...keys].map(([key, one]) => this.#showTo(key, one.view)));
  }

  /** While votes come in, a thousand phones see what they saw: they are passed over at once. */
  async #showTo(key: string, view: () => Promise<string>): Promise<void> {
    const text = await view();
    const behind = [...this.listeners].filter((one) => one.key === key && !one.hasSeen(text));
    await Promise.all(behind.map((one) => one.show(text)));
  }

  #viewOnce(key: string, view: ViewMaker): Promise<string> {
    const made = this.#views.get(key) ?? view().then((it) => JSON.stringify(it));
    this.#views.set(key, made);
    // A view is shared by those who ask in the same moment, never kept.
    const forget = () => this.#views.get(key) === made && this.#views.delete(key);
    void made.finally(forget).catch(() => {});
    return made;
  }
}
