import type pg from 'pg';
import { Absent, AWAY_MS } from './absent';
import { Audience, type FeedRequest, type Listener } from './audience';
import { Addresses, makingWay } from './feed-bounds';
import { Throttle } from './throttle';
import type { Store } from './store';

/** Other nodes are told at most this often, ms. */
const TELL_MS = 50;
const CHANNEL = 'feltfoot_room';
/** What is passed on at once, word for word. */
const RELAY_CHANNEL = 'feltfoot_relay';
/** PostgreSQL carries less than 8000 bytes in one notification. */
const MOST_RELAYED = 7000;
/** Whose listeners may have lost their key. */
const DOUBT_CHANNEL = 'feltfoot_doubt';
/** Which phone has left its room or is back. */
const SEAT_CHANNEL = 'feltfoot_seat';
/** Timers are a little early now and then, ms. */
const PAST_MS = 50;
/** Proxies cut a connection on which nothing comes, ms. */
const HEARTBEAT_MS = 15_000;

interface Relayed {
  room: string;
  key: string;
  event: string;
  data: unknown;
}

interface SeatNews extends Pick<Listener, 'key'> {
  room: string;
  seat: string;
  isHere: boolean;
}

/** Tells everyone who looks at a room what changed there, in batches, across nodes. */
export class Feed {
  readonly #rooms = new Map<string, Audience>();
  readonly #addresses = new Addresses();
  readonly #absent = new Absent();
  /** Rooms that the other nodes have not been told of yet. */
  readonly #unsaid = new Set<string>();
  readonly #telling = new Throttle(() => this.#tell(), { gather_ms: 0, every_ms: TELL_MS });
  #ear: pg.PoolClient | undefined;
  #isClosed = false;
  #againSoon: NodeJS.Timeout | undefined;
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
    return [...this.#rooms.values()].reduce((sum, { listeners }) => sum + listeners.size, 0);
  }

  /** Something in this room is other than it was; heard on every node. */
  changed(room: string): void {
    this.#rooms.get(room)?.changed();
    if (!this.store.pool) return;
    this.#unsaid.add(room);
    this.#telling.want();
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

  /** Seats of a room whose phones have left it, on whatever node they were. */
  away(room: string): string[] {
    return this.#absent.of(room, performance.now());
  }

  #tellSeat(news: SeatNews): void {
    if (!this.store.pool) return this.#hearSeat(news);
    const text = JSON.stringify(news);
    // One that gets lost leaves a count off by one, until that phone comes or goes again.
    void this.store.pool.query('select pg_notify($1, $2)', [SEAT_CHANNEL, text]).catch(() => {});
  }

  #hearSeat({ room, key, seat, isHere }: SeatNews): void {
    const show = () => this.#rooms.get(room)?.changed();
    const now = performance.now();
    if (isHere) {
      if (this.#absent.came(room, seat, now)) show();
      return;
    }
    // Word of its leaving may come late, after it is back.
    if (this.#rooms.get(room)?.alike(key, seat).length) return;
    this.#absent.left(room, seat, now);
    setTimeout(show, AWAY_MS + PAST_MS).unref();
  }

  /** Keys of this space were made void: who listens with one is sent away, on every node. */
  doubt(space: string): void {
    if (!this.store.pool) return void this.#sendAway(space);
    // One that gets lost is made up for by the heartbeat.
    void this.store.pool.query('select pg_notify($1, $2)', [DOUBT_CHANNEL, space]).catch(() => {});
  }

  /** @param space all when it is not given */
  async #sendAway(space?: string): Promise<void> {
    const all = [...this.#rooms].flatMap(([room, { listeners }]) =>
      [...listeners].map((one) => ({ room, one }))
    );
    const asked = all.map(async ({ room, one }) => {
      const { keyed } = one;
      if (!keyed || (space !== undefined && space !== keyed.space)) return;
      if (!(await keyed.holds())) this.#drop(room, one);
    });
    // A store that cannot be asked just now shows nothing new either: asked again at the next beat.
    await Promise.allSettled(asked);
  }

  #pass(text: string): void {
    const { room, key, event, data } = JSON.parse(text) as Relayed;
    for (const one of this.#rooms.get(room)?.listeners ?? []) {
      if (one.key === key) one.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
    }
  }

  /** A stream of a room's views. Refuses with 503 when there are too many, see feed-bounds.ts. */
  stream(room: string, wanted: FeedRequest): ReadableStream<Uint8Array> {
    const { key, seat = null, from } = wanted;
    const older = makingWay(this.#rooms.get(room)?.alike(key, seat) ?? [], seat);
    if (!older.some((one) => one.from === from)) this.#addresses.check(from);
    for (const one of older) this.#drop(room, one);
    let listener: Listener;
    return new ReadableStream({
      start: async (controller) => {
        const audience = this.#rooms.get(room) ?? new Audience();
        this.#rooms.set(room, audience);
        listener = audience.add(wanted, controller);
        this.#addresses.add(listener);
        if (seat !== null) this.#tellSeat({ room, key, seat, isHere: true });
        listener.write(': here\n\n');
        await listener.show();
        if (this.#isClosed) this.#drop(room, listener);
      },
      cancel: () => this.#drop(room, listener)
    });
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    clearInterval(this.#heart);
    this.#telling.stop();
    for (const audience of this.#rooms.values()) audience.end();
    this.#rooms.clear();
    this.#addresses.clear();
    this.#ear?.release(true);
    this.#ear = undefined;
  }

  /** By the connection that listens, so that what comes back of it is known as our own. */
  async #tell(): Promise<void> {
    const rooms = [...this.#unsaid];
    this.#unsaid.clear();
    try {
      if (!this.#ear) throw new Error('no connection');
      const notify = 'select pg_notify($1, room) from unnest($2::text[]) as room';
      await this.#ear.query(notify, [CHANNEL, rooms]);
    } catch {
      // Said when we listen again.
      for (const room of rooms) this.#unsaid.add(room);
    }
  }

  async #listen(pool: pg.Pool): Promise<void> {
    const ear = await pool.connect();
    this.#ear = ear;
    ear.on('error', () => this.#listenAgain(pool));
    // A notice is nothing to keep, so that nobody waits until the disk has it.
    await ear.query('set synchronous_commit = off');
    const { rows } = await ear.query<{ pid: number }>('select pg_backend_pid() as pid');
    ear.on('notification', ({ channel, processId, payload = '' }) => {
      if (channel === RELAY_CHANNEL) this.#pass(payload);
      else if (channel === SEAT_CHANNEL) this.#hearSeat(JSON.parse(payload) as SeatNews);
      else if (channel === DOUBT_CHANNEL) void this.#sendAway(payload);
      else if (processId !== rows[0].pid) this.#rooms.get(payload)?.changed();
    });
    await ear.query(`listen ${CHANNEL}`);
    await ear.query(`listen ${RELAY_CHANNEL}`);
    await ear.query(`listen ${SEAT_CHANNEL}`);
    await ear.query(`listen ${DOUBT_CHANNEL}`);
  }

  /** What was said while nobody listened is made up for by showing every room anew. */
  #listenAgain(pool: pg.Pool): void {
    this.#ear?.release(true);
    this.#ear = undefined;
    // A connection that breaks while it begins to listen says so twice.
    if (this.#isClosed || this.#againSoon) return;
    const again = () => {
      this.#againSoon = undefined;
      return this.#listen(pool).then(
        () => {
          for (const audience of this.#rooms.values()) audience.changed();
          if (this.#unsaid.size > 0) this.#telling.want();
        },
        () => this.#listenAgain(pool)
      );
    };
    this.#againSoon = setTimeout(again, 1000).unref();
  }

  #beat(): void {
    this.#absent.forgetOld(performance.now());
    for (const [room, { listeners }] of this.#rooms) {
      for (const one of listeners) if (!one.write(': still here\n\n')) this.#drop(room, one);
    }
    void this.#sendAway();
  }

  #drop(room: string, listener: Listener): void {
    const audience = this.#rooms.get(room);
    const wasThere = audience?.listeners.has(listener);
    audience?.drop(listener);
    this.#addresses.delete(listener);
    const { key, seat } = listener;
    if (seat !== null && wasThere && audience?.alike(key, seat).length === 0) {
      this.#tellSeat({ room, key, seat, isHere: false });
    }
    if (audience?.listeners.size === 0) this.#rooms.delete(room);
  }
}
