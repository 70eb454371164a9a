import { Kysely, Migrator, PostgresDialect } from 'kysely';
import pg from 'pg';
import { bringOutIfPossible } from './deletions';
import { migrations } from './migrations';
import { openFile, storeOfFile } from './sqlite-store';
import type { Db, Store } from './opened-store';
import { StoreMarker } from './store-marker';
import type { Tables } from './tables';

export type { Db, Store } from './opened-store';

/** Where data is kept: a PostgreSQL address, or else a folder. */
export interface StorePlace {
  url?: string;
  folder: string;
  /** All rows at once take their time: backups wait for it. */
  isPatient?: boolean;
  /** What the store held before is not missed: it is about to be put back. */
  isNew?: boolean;
}

const CONNECTIONS = 10;
/**
 * PostgreSQL that cannot be reached, a lock that somebody holds, a statement that takes for ever: whoever
 * asks hears 503 after this, ms, and sends it again. Longer than the longest statement of a full room.
 */
const PATIENCE = {
  connectionTimeoutMillis: 3000,
  lock_timeout: 4000,
  statement_timeout: 8000,
  /** Where the other side is gone without a word. */
  query_timeout: 10_000,
  idle_in_transaction_session_timeout: 10_000
};

export function placeFrom(env: Record<string, string | undefined>): StorePlace {
  return { url: env.DATABASE_URL, folder: env.FELTFOOT_DATA || '.feltfoot/data' };
}

/** Opens the store and brings its tables up to date. Throws when it cannot be written. */
export async function openStore({ url, folder, isPatient, isNew }: StorePlace): Promise<Store> {
  const store = url
    ? openPostgres(url, folder, isPatient ? {} : PATIENCE)
    : openSqlite(folder, isNew ?? false);
  try {
    if (!url || isPatient) await migrate(store.db);
    else await migratePatiently(url, folder);
  } catch (error) {
    await store.close();
    throw error;
  }
  return store;
}

/** Another node may be at it, and a table's rows may all be written anew. */
async function migratePatiently(url: string, folder: string): Promise<void> {
  const { connectionTimeoutMillis } = PATIENCE;
  const store = openPostgres(url, folder, { connectionTimeoutMillis });
  try {
    await migrate(store.db);
  } finally {
    await store.close();
  }
}

function openSqlite(folder: string, isNew: boolean): Store {
  const file = openFile(folder);
  const marker = new StoreMarker(folder, file);
  const store = storeOfFile(file, folder);
  try {
    if (!isNew) marker.check();
    marker.countOn();
  } catch (error) {
    file.close();
    throw error;
  }
  return {
    ...store,
    async checkpoint() {
      const isEmpty = await store.checkpoint();
      if (isEmpty) marker.countOn();
      return isEmpty;
    }
  };
}

function openPostgres(url: string, folder: string, patience: pg.PoolConfig): Store {
  const pool = new pg.Pool({ connectionString: url, max: CONNECTIONS, ...patience });
  // One that breaks is replaced, and whoever used it hears so from its query; but its own error, unheard,
  // ends the process, of one in use as of one that is idle.
  pool.on('error', () => {});
  pool.on('connect', (client) => client.on('error', () => {}));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return {
    kind: 'postgres',
    db,
    pool,
    close: () => db.destroy(),
    async deleting(work) {
      try {
        return await work();
      } finally {
        await bringOutIfPossible(db, folder);
      }
    },
    async checkpoint() {
      await bringOutIfPossible(db, folder);
      return true;
    },
    keepReserve: () => {}
  };
}

/**
 * Takes back what this version added to the tables, for the version before it.
 * @returns the name of what was taken back
 */
export async function rollBack(db: Db): Promise<string> {
  const { error, results } = await new Migrator({ db, provider: migrations }).migrateDown();
  if (error) throw error;
  return results?.[0]?.migrationName ?? '';
}

/** Two nodes that start together wait for each other: the migrator takes a lock. */
async function migrate(db: Db): Promise<void> {
  const migrator = new Migrator({ db, provider: migrations });
  const { error } = await migrator.migrateToLatest();
  if (error) throw error;
}
