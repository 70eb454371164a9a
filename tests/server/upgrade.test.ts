import { Migrator } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { backupLines, restoreLines } from '../../src/lib/server/backup';
import { migrations } from '../../src/lib/server/migrations';
import { openStore, rollBack, type Db, type StorePlace } from '../../src/lib/server/store';
import { TABLE_NAMES } from '../../src/lib/server/tables';
import { storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';

/** What the store writes down of itself, and takes over into files beside it when it is opened: nobody's rows. */
const ITS_OWN = ['deletions', 'store_mark'];

/** The tables that a store has, whatever they are by now, and their columns. */
async function tablesOf(db: Db) {
  const tables = await db.introspection.getTables();
  return tables.filter(({ name }) => !ITS_OWN.includes(name));
}

type Row = Record<string, unknown>;

/** A row in each of its tables, with something in each column. */
async function fill(db: Db): Promise<void> {
  for (const { name, columns } of await tablesOf(db)) {
    const values = columns.map((column): [string, unknown] => [
      column.name,
      /int/i.test(column.dataType) ? 3 : `${name}'s ${column.name}`
    ]);
    await db
      .insertInto(name as 'rooms')
      .values(Object.fromEntries(values) as never)
      .execute();
  }
}

/** Its rows by table. */
async function held(db: Db): Promise<Record<string, Row[]>> {
  const rows = (await tablesOf(db)).map(async ({ name }) => {
    const found: Row[] = await db
      .selectFrom(name as 'rooms')
      .selectAll()
      .execute();
    return [name, found] as const;
  });
  return Object.fromEntries(await Promise.all(rows));
}

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

    /** A store as the version whose last migration this was left it. @returns what it holds */
    async function asOf(name: string) {
      place = await started.fresh();
      const { db, close } = await openStore(place);
      for (const one of names.toReversed()) {
        if (one === name) break;
        await rollBack(db);
      }
      await fill(db);
      const rows = await held(db);
      await close();
      return rows;
    }

    test('has no table that a backup leaves out', async () => {
      const { db, close } = await openStore(await started.fresh());
      const tables = (await tablesOf(db)).map(({ name }) => name);
      expect(tables.toSorted()).toEqual([...TABLE_NAMES].toSorted());
      await close();
    });

    test('of the last version is brought up to date with a row of every table', async () => {
      const before = await asOf(names[names.length - 2]);
      const { db, close } = await openStore(place);
      const now = await held(db);
      // What is new is empty.
      expect(now).toMatchObject(before);
      expect(Object.values(before).filter((rows) => rows.length !== 1)).toEqual([]);
      const lines = await backupLines(db, { made: NOW, until: NOW });
      const other = await openStore(await started.fresh());
      await restoreLines(other.db, lines, { deletions: [], now: NOW });
      expect(await held(other.db)).toEqual(now);
      await other.close();
      await close();
    });

    test('of this version goes back to the last with a row of every table, and forth again', async () => {
      place = await started.fresh();
      const { db, close } = await openStore(place);
      await fill(db);
      const all = await held(db);
      expect(await rollBack(db)).toBe(names[names.length - 1]);
      // As the version before sees it: it knows all that was done to the tables, and nothing is missing.
      const known = Object.entries(await migrations.getMigrations()).slice(0, -1);
      const provider = { getMigrations: async () => Object.fromEntries(known) };
      const { error, results } = await new Migrator({ db, provider }).migrateToLatest();
      expect({ error, results }).toEqual({ error: undefined, results: [] });
      const back = await held(db);
      expect(all).toMatchObject(back);
      expect(Object.values(back).filter((rows) => rows.length !== 1)).toEqual([]);
      await close();
      const again = await openStore(place);
      expect(await held(again.db)).toMatchObject(back);
      await again.close();
    });
  });
});
