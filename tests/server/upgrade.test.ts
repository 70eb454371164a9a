import { Migrator } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { backupLines, restoreLines } from '../../src/lib/server/backup';
import { migrations } from '../../src/lib/server/migrations';
import { openStore, rollBack, type Db, type StorePlace } from '../../src/lib/server/store';
import { storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
const room = {
  ...{ id: 'room', space_id: 'space', code: 'abcdef', state: '{}', version: 3 },
  ...{ created_at: NOW, ends_at: NOW }
};
const client = {
  ...{ id: 'client', assignment_id: 'homework', token_hash: 'h', nickname: 'Ina' },
  ...{ joined_at: NOW, note: '' }
};

async function fill(db: Db): Promise<void> {
  await db
    .insertInto('rooms')
    .values(room as never)
    .execute();
  await db.insertInto('clients').values(client).execute();
}

async function held(db: Db) {
  const rooms = await db.selectFrom('rooms').select(['id', 'code', 'version']).execute();
  const clients = await db.selectFrom('clients').selectAll().execute();
  return { rooms: rooms.map((one) => ({ ...one, version: Number(one.version) })), clients };
}
const ALL = { rooms: [{ id: 'room', code: 'abcdef', version: 3 }], clients: [client] };

const names = Object.keys(await migrations.getMigrations());

describe.each(storeKinds)('on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('a store', () => {
    let started: Awaited<ReturnType<typeof kind.start>>;
    let place: StorePlace;
    beforeAll(async () => {
      started = await kind.start();
    });
    afterAll(() => started.stop());

    /** A store as the version whose last migration this was left it. */
    async function asOf(name: string): Promise<void> {
      place = await started.fresh();
      const { db, close } = await openStore(place);
      for (const one of names.toReversed()) {
        if (one === name) break;
        await rollBack(db);
      }
      await fill(db);
      await close();
    }

    test('of the last version is brought up to date with all that it holds', async () => {
      await asOf(names[names.length - 2]);
      const { db, close } = await openStore(place);
      expect(await held(db)).toEqual(ALL);
      const lines = await backupLines(db, { made: NOW, until: NOW });
      const other = await openStore(await started.fresh());
      await restoreLines(other.db, lines, { deletions: [], now: NOW });
      expect(await held(other.db)).toEqual(ALL);
      await other.close();
      await close();
    });

    test('of this version goes back to the last with all that it holds, and forth again', async () => {
      place = await started.fresh();
      const { db, close } = await openStore(place);
      await fill(db);
      expect(await rollBack(db)).toBe(names[names.length - 1]);
      // As the version before sees it: it knows all that was done to the tables, and nothing is missing.
      const before = Object.entries(await migrations.getMigrations()).slice(0, -1);
      const provider = { getMigrations: async () => Object.fromEntries(before) };
      const { error, results } = await new Migrator({ db, provider }).migrateToLatest();
      expect({ error, results }).toEqual({ error: undefined, results: [] });
      expect(await held(db)).toEqual(ALL);
      await close();
      const again = await openStore(place);
      expect(await held(again.db)).toEqual(ALL);
      await again.close();
    });
  });
});
