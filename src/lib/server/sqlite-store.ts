import Database from 'better-sqlite3';
import { Kysely, SqliteDialect, type SqliteDatabase, type SqliteStatement } from 'kysely';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { bringOutIfPossible } from './deletions';
import { isDiskFull } from './faults';
import { Reserve } from './reserve';
import { STORE_FILE, type Store } from './opened-store';
import { closeToOthers } from './store-files';
import type { Tables } from './tables';

/** How long a writer waits for another process at the same file, ms: a backup takes less. */
const BUSY_MS = 5000;

/** The file of a store, made where there is none: its owner's alone. */
export function openFile(folder: string): Database.Database {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = new Database(join(folder, STORE_FILE));
  // Before the log beside it is made, with the next line: that is as open as the file.
  closeToOthers(folder);
  file.pragma('journal_mode = WAL');
  // FULL: an acknowledged row has reached the disk, whatever happens to machine or process after it.
  file.pragma('synchronous = FULL');
  // Deleted is deleted: what stood there is written over, in rows, indices and free pages.
  file.pragma('secure_delete = ON');
  file.pragma(`busy_timeout = ${BUSY_MS}`);
  return file;
}

/** Statements that are kept: of those that take many rows, one for each number of them. */
const MOST_STATEMENTS = 500;

/** To make a statement takes SQLite longer than to answer it, and a room asks the same all the time. */
function withStatements(file: Database.Database): SqliteDatabase {
  const made = new Map<string, SqliteStatement>();
  return {
    close: () => file.close(),
    prepare(text) {
      const known = made.get(text);
      if (known) return known;
      if (made.size >= MOST_STATEMENTS) made.clear();
      const statement = file.prepare(text);
      made.set(text, statement);
      return statement;
    }
  };
}

/** A store on an open SQLite file. */
export function storeOfFile(file: Database.Database, folder = ''): Store {
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: withStatements(file) }) });
  const reserve = new Reserve(folder);
  return {
    kind: 'sqlite',
    db,
    pool: null,
    close: () => db.destroy(),
    async checkpoint() {
      await bringOutIfPossible(db, folder);
      return checkpoint(file);
    },
    keepReserve: () => reserve.fill(),
    async deleting(work) {
      try {
        return await work();
      } catch (error) {
        if (!isDiskFull(error)) throw error;
        reserve.give();
        return await work();
      } finally {
        await bringOutIfPossible(db, folder);
        checkpoint(file);
        reserve.fill();
      }
    }
  };
}

/**
 * Brings all that was written into the file itself and empties the log, which would else hold what was
 * deleted until it is written over. Where somebody reads an older state it is left for the next time.
 * @returns whether the log is empty
 */
function checkpoint(file: Database.Database): boolean {
  file.pragma('busy_timeout = 0');
  try {
    const [{ busy }] = file.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[];
    return busy === 0;
  } catch {
    // A full disk, or a file that can only be read: the log is whole, and stays.
    return false;
  } finally {
    file.pragma(`busy_timeout = ${BUSY_MS}`);
  }
}
