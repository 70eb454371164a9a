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
}

/** How long a writer waits for another process at the same file, ms: a backup takes less. */
const BUSY_MS = 5000;
const CONNECTIONS = 10;

export function placeFrom(env: Record<string, string | undefined>): StorePlace {
  return { url: env.DATABASE_URL, folder: env.FELTFOOT_DATA || '.feltfoot/data' };
}

/** Opens the store and brings its tables up to date. Throws when it cannot be written. */
export async function openStore({ url, folder }: StorePlace): Promise<Store> {
  const store = url ? openPostgres(url) : openSqlite(folder);
  try {
    await migrate(store.db);
  } catch (error) {
    await store.close();
    throw error;
  }
  return store;
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

function openPostgres(url: string): Store {
  const pool = new pg.Pool({ connectionString: url, max: CONNECTIONS });
  // An idle connection that breaks is replaced at its next use; unheard, its error ends the process.
  pool.on('error', () => {});
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  return { kind: 'postgres', db, pool, close: () => db.destroy() };
}

/** Two nodes that start together wait for each other: the migrator takes a lock. */
async function migrate(db: Db): Promise<void> {
  const migrator = new Migrator({ db, provider: migrations });
  const { error } = await migrator.migrateToLatest();
  if (error) throw error;
}
