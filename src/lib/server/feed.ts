import type pg from 'pg';
import type { Store } from './store';

/** Listeners of a room hear at most this often, ms: a room that votes at once is one message. */
export const BATCH_MS = 200;
/** Other nodes are told at most this often, ms. */
const TELL_MS = 50;
const CHANNEL = 'feltfoot_room';
/** What is passed on at once, word for word. */
const RELAY_CHANNEL = 'feltfoot_relay';
/** PostgreSQL carries less than 8000 bytes in one notification. */
const MOST_RELAYED = 7000;
/** A listener that has not read this much is gone or too slow; it reconnects by itself. */
const MOST_UNREAD = -64;
/** Proxies cut a connection on which nothing comes, ms. */
const HEARTBEAT_MS = 15_000;

/** Makes what a listener is shown now; the same text twice is sent once. */
export type View = () => Promise<unknown>;

interface Relayed {
  room: string;
  key: string;
  event: string;
  data: unknown;
}

class Listener {
  #last = '';
  #turn: Promise<void> = Promise.resolve();
  constructor(
    readonly key: string,
    private readonly view: (key: string) => Promise<string>,
    private readonly controller: ReadableStreamDefaultController<Uint8Array>
  ) {}

  /** One after the other: an older view never comes after a newer one. */
  show(): Promise<void> {
    this.#turn = this.#turn.then(() => this.#show()).catch(() => {});
    return this.#turn;
  }

  async #show(): Promise<void> {
    const text = await this.view(this.key);
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

const encoder = new TextEncoder();

/** Tells everyone who looks at a room what changed there, in batches, across nodes. */
export class Feed {
  readonly #rooms = new Map<string, Set<Listener>>();
  readonly #changed = new Set<string>();
  #timer: NodeJS.Timeout | undefined;
  /** Rooms that the other nodes have not been told of yet. */
  readonly #unsaid = new Set<string>();
  #telling: NodeJS.Timeout | undefined;
  #ear: pg.PoolClient | undefined;
  #isClosed = false;
  readonly #heart: NodeJS.Timeout;

  private constructor(private readonly store: Store) {
    this.#heart = setInterval(() => this.#beat(), HEARTBEAT_MS);
    this.#heart.unref();
  }

  static async open(store: Store): Promise<Feed> {
    const feed = new Feed(store);
    if (store.pool) await feed.#listen(store.pool);
    return feed;
  }

  get listeners(): number {
    return [...this.#rooms.values()].reduce((sum, { size }) => sum + size, 0);
  }

  /** Something in this room is other than it was; heard on every node. */
  changed(room: string): void {
    if (!this.store.pool) return this.#mark(room);
    this.#unsaid.add(room);
    this.#telling ??= setTimeout(() => void this.#tell(), TELL_MS);
  }

  /**
   * Passes on what is worth something only now, to those of a room who listen with this key. Nothing
   * of it is kept: who is not there, or too slow, misses it. Throws RangeError when it is too long.
   */
  relay(room: string, key: string, event: string, data: unknown): void {
    const text = JSON.stringify({ room, key, event, data } satisfies Relayed);
    if (text.length > MOST_RELAYED)
      throw new RangeError(`relay: ${text.length} bytes are too long`);
    if (!this.store.pool) return this.#pass(text);
    // One that gets lost is made up for by the next.
    void this.store.pool.query('select pg_notify($1, $2)', [RELAY_CHANNEL, text]).catch(() => {});
  }

  #pass(text: string): void {
    const { room, key, event, data } = JSON.parse(text) as Relayed;
    for (const one of this.#rooms.get(room) ?? []) {
      if (one.key === key) one.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
    }
  }

  /**
   * A stream of a room's views. Listeners with the same key see the same, so that it is computed once
   * for all of them.
   */
  stream(room: string, key: string, view: View): ReadableStream<Uint8Array> {
    let listener: Listener;
    return new ReadableStream({
      start: async (controller) => {
        listener = new Listener(key, () => this.#viewOnce(room, key, view), controller);
        listener.write(': here\n\n');
        this.#add(room, listener);
        await listener.show();
        if (this.#isClosed) listener.end();
      },
      cancel: () => this.#drop(room, listener)
    });
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    clearInterval(this.#heart);
    clearTimeout(this.#timer);
    clearTimeout(this.#telling);
    for (const listeners of this.#rooms.values()) for (const one of listeners) one.end();
    this.#rooms.clear();
    this.#ear?.release(true);
    this.#ear = undefined;
  }

  /** One message for all that happened in a moment. One that gets lost is made up for by the next. */
  async #tell(): Promise<void> {
    const rooms = [...this.#unsaid];
    this.#unsaid.clear();
    this.#telling = undefined;
    const told = rooms.map((room) =>
      this.store.pool?.query('select pg_notify($1, $2)', [CHANNEL, room])
    );
    await Promise.allSettled(told);
  }

  async #listen(pool: pg.Pool): Promise<void> {
    const ear = await pool.connect();
    this.#ear = ear;
    ear.on('notification', ({ channel, payload = '' }) =>
      channel === RELAY_CHANNEL ? this.#pass(payload) : this.#mark(payload)
    );
    ear.on('error', () => this.#listenAgain(pool));
    await ear.query(`listen ${CHANNEL}`);
    await ear.query(`listen ${RELAY_CHANNEL}`);
  }

  /** What was said while nobody listened is made up for by showing every room anew. */
  #listenAgain(pool: pg.Pool): void {
    this.#ear?.release(true);
    this.#ear = undefined;
    if (this.#isClosed) return;
    const again = () =>
      this.#listen(pool).then(
        () => [...this.#rooms.keys()].forEach((room) => this.#mark(room)),
        () => this.#listenAgain(pool)
      );
    setTimeout(again, 1000).unref();
  }

  #mark(room: string): void {
    if (this.#isClosed || !this.#rooms.has(room)) return;
    this.#changed.add(room);
    this.#timer ??= setTimeout(() => void this.#flush(), BATCH_MS);
  }

  async #flush(): Promise<void> {
    const rooms = [...this.#changed];
    this.#changed.clear();
    this.#views.clear();
    const all = rooms.flatMap((room) => [...(this.#rooms.get(room) ?? [])]);
    await Promise.allSettled(all.map((one) => one.show()));
    this.#timer = undefined;
    if (this.#changed.size > 0) this.#timer = setTimeout(() => void this.#flush(), BATCH_MS);
  }

  readonly #views = new Map<string, Promise<string>>();

  #viewOnce(room: string, key: string, view: View): Promise<string> {
    const name = `${room} ${key}`;
    const made = this.#views.get(name) ?? view().then((it) => JSON.stringify(it));
    this.#views.set(name, made);
    // A view is shared by those who ask in the same moment, never kept.
    void made.finally(() => this.#views.delete(name)).catch(() => {});
    return made;
  }

  #beat(): void {
    for (const [room, listeners] of this.#rooms) {
      for (const one of listeners) if (!one.write(': still here\n\n')) this.#drop(room, one);
    }
  }

  #add(room: string, listener: Listener): void {
    const listeners = this.#rooms.get(room) ?? new Set();
    this.#rooms.set(room, listeners.add(listener));
  }

  #drop(room: string, listener: Listener): void {
    const listeners = this.#rooms.get(room);
    listeners?.delete(listener);
    if (listeners?.size === 0) this.#rooms.delete(room);
    listener.end();
  }
}
