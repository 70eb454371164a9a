import Database from 'better-sqlite3';
import { Kysely, Migrator, PostgresDialect, SqliteDialect } from 'kysely';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { migrations } from './migrations';
import type { Tables } from './tables';

export type Db = Kysely<Tables>;

export interface Store {
  readonly kind: 'sqlite' | 'postgres';
  readonly db: Db;
  /** Only PostgreSQL has one: connections that other nodes can be heard on. */
  readonly pool: pg.Pool | null;
  close(): Promise<void>;
}

/** Where data is kept: a PostgreSQL address, or else a folder. */
export interface StorePlace {
  url?: string;
  folder: string;
  /** All rows at once take their time: backups wait for it. */
  isPatient?: boolean;
}

/** How long a writer waits for another process at the same file, ms: a backup takes less. */
const BUSY_MS = 5000;
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
export async function openStore({ url, folder, isPatient }: StorePlace): Promise<Store> {
  const store = url ? openPostgres(url, isPatient ? {} : PATIENCE) : openSqlite(folder);
  try {
    if (!url || isPatient) await migrate(store.db);
    else await migratePatiently(url);
  } catch (error) {
    await store.close();
    throw error;
  }
  return store;
}

/** Another node may be at it, and a table's rows may all be written anew. */
async function migratePatiently(url: string): Promise<void> {
  const { connectionTimeoutMillis } = PATIENCE;
  const store = openPostgres(url, { connectionTimeoutMillis });
  try {
    await migrate(store.db);
  } finally {
    await store.close();
  }
}

function openSqlite(folder: string): Store {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = new Database(join(folder, 'feltfoot.sqlite'));
  file.pragma('journal_mode = WAL');
  // FULL: an acknowledged row has reached the disk, whatever happens to machine or process after it.
  file.pragma('synchronous = FULL');
  file.pragma(`busy_timeout = ${BUSY_MS}`);
  return storeOfFile(file);
}

/** A store on an open SQLite file. */
export function storeOfFile(file: Database.Database): Store {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) });
  return { kind: 'sqlite', db, pool: null, close: () => db.destroy() };
}

function openPostgres(url: string, patience: pg.PoolConfig): Store {
  const pool = new pg.Pool({ connectionString: url, max: CONNECTIONS, ...patience });
  // One that breaks is replaced, and whoever used it hears so from its query; but its own error, unheard,
  // ends the process, of one in use as of one that is idle.
  pool.on('error', () => {});
  pool.on('connect', (client) => client.on('error', () => {}));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return { kind: 'postgres', db, pool, close: () => db.destroy() };
}

/** Two nodes that start together wait for each other: the migrator takes a lock. */
async function migrate(db: Db): Promise<void> {
  const migrator = new Migrator({ db, provider: migrations });
  const { error } = await migrator.migrateToLatest();
  if (error) throw error;
}
