import { sql } from 'kysely';
import { once } from 'node:events';
import { createServer, type AddressInfo } from 'node:net';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Feed } from '../../src/lib/server/feed';
import { storeTrouble } from '../../src/lib/server/faults';
import { healthOf } from '../../src/lib/server/health';
import { openStore, type Store } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import { postgres } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
const IDLE = { threads: 1, busy: 0, waiting: 0, longest_s: 0 };

const suite = postgres.missing ? describe.skip : describe;
suite('PostgreSQL that goes down under load', () => {
  let server: Awaited<ReturnType<typeof postgres.start>>;
  let url: string;
  let store: Store;
  let feed: Feed;

  beforeAll(async () => {
    server = await postgres.start();
    url = (await server.fresh()).url ?? '';
    store = await openStore({ url, folder: '' });
    feed = await Feed.open(store);
  });
  afterAll(async () => {
    await feed.close();
    await store.close();
    await server.stop();
  });

  const challenge = () => ({
    token_hash: newToken(),
    challenge: 'x',
    space_id: '',
    ends_at: NOW
  });

  test.each(['fast', 'immediate'] as const)(
    'by a stop that is %s ends nothing here: whoever asks hears 503, and it goes on by itself',
    async (how) => {
      const faults: unknown[] = [];
      let [isOver, written] = [false, 0];
      const load = Array.from({ length: 20 }, async () => {
        while (!isOver) {
          await store.db
            .transaction()
            .execute(async (inOne) => {
              await inOne.insertInto('challenges').values(challenge()).execute();
              await inOne.selectFrom('challenges').select('token_hash').limit(1).execute();
            })
            .then(
              () => void written++,
              (fault) => void faults.push(fault)
            );
          // Lets the sockets be heard: this test's own process is the server here.
          await new Promise((next) => setTimeout(next, 5));
        }
      });
      // One is surely under way when the server goes down: the others may all be between two.
      const asleep = sql`select pg_sleep(20)`
        .execute(store.db)
        .catch((fault: unknown) => void faults.push(fault));
      await expect.poll(() => written).toBeGreaterThan(2 * load.length);
      server.restart?.(how);
      await expect.poll(() => faults.length).toBeGreaterThan(0);
      const before = written;
      await expect.poll(() => written).toBeGreaterThan(before + 20);
      isOver = true;
      await Promise.all([...load, asleep]);
      for (const fault of faults) {
        expect(storeTrouble(fault), String(fault)).toMatchObject({ status: 503 });
      }
      // What is heard from other nodes comes again too.
      let heard = 0;
      const view = async () => ({ heard: ++heard });
      const reader = feed.stream('room', { key: 'phone', view, from: 'here' }).getReader();
      await reader.read();
      const other = new pg.Client({ connectionString: url });
      await other.connect();
      const told = async () => {
        await other.query("select pg_notify('feltfoot_room', 'room')");
        return heard;
      };
      await expect.poll(told).toBeGreaterThan(1);
      await reader.cancel();
      await other.end();
    },
    60_000
  );

  // These two wait for seconds, for a lock and for a word: they wait at once.
  test.concurrent(
    'no connection of ours waits for ever: for a lock, a statement, or a transaction left open',
    async ({ expect }) => {
      const { rows } = await sql<{ name: string; setting: string }>`
      select name, setting from pg_settings where name in
      ('lock_timeout', 'statement_timeout', 'idle_in_transaction_session_timeout')
    `.execute(store.db);
      expect(Object.fromEntries(rows.map(({ name, setting }) => [name, setting]))).toEqual({
        lock_timeout: '4000',
        statement_timeout: '8000',
        idle_in_transaction_session_timeout: '10000'
      });
      const other = new pg.Client({ connectionString: url });
      await other.connect();
      await other.query('begin; lock table challenges in access exclusive mode');
      const waiting = store.db.insertInto('challenges').values(challenge()).execute();
      const fault: unknown = await waiting.then(
        () => 'it was written',
        (error: unknown) => error
      );
      await other.query('rollback');
      await other.end();
      expect(storeTrouble(fault), String(fault)).toMatchObject({ status: 503 });
    }
  );

  test.concurrent(
    'a store that cannot be reached is refused in time, with 503',
    async ({ expect }) => {
      // Listens, and never says a word.
      const mute = createServer().listen(0, '127.0.0.1');
      await once(mute, 'listening');
      const { port } = mute.address() as AddressInfo;
      const fault: unknown = await openStore({
        url: `postgres://feltfoot@127.0.0.1:${port}/store`,
        folder: ''
      }).then(
        () => 'it opened',
        (error: unknown) => error
      );
      mute.close();
      expect(storeTrouble(fault), String(fault)).toMatchObject({ status: 503 });
    }
  );

  test('a store that holds everybody up is told as unwell while it does, within a second, and how the graders are', async () => {
    const other = new pg.Client({ connectionString: url });
    await other.connect();
    await other.query('begin; lock table spaces in access exclusive mode');
    const from = performance.now();
    const grading = { threads: 2, busy: 2, waiting: 5, longest_s: 9 };
    expect(await healthOf(store, grading)).toEqual({
      well: false,
      store: 'does not answer',
      compute: grading
    });
    // What watches gives up after that.
    expect(performance.now() - from).toBeLessThan(1000);
    await other.query('rollback');
    await other.end();
    await expect.poll(() => healthOf(store, IDLE)).toMatchObject({ well: true, compute: IDLE });
  });
});
