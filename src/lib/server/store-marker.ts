import type Database from 'better-sqlite3';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDiskFull } from './faults';
import { STORE_FILE } from './opened-store';

/** Beside the store: how far the store was when this was written. */
export const MARKER_FILE = 'feltfoot.marker';

/** A store that is not what it was: emptied, put back in part, or without its log. */
export class StoreLost extends Error {
  constructor(had: number, has: number) {
    super(
      `The store has lost what it held: it was at ${had} and is at ${has}. ${STORE_FILE}, ` +
        `${STORE_FILE}-wal and ${STORE_FILE}-shm belong together. Put them back, or a backup with ` +
        `npm run restore; to begin anew, delete ${MARKER_FILE} beside them.`
    );
    this.name = 'StoreLost';
  }
}

/**
 * Counts on in the store and then beside it. The count in the store goes into its log first, so that a
 * store that lost its log is behind its marker, as one that was emptied is.
 */
export class StoreMarker {
  readonly #file: string;

  constructor(
    folder: string,
    private readonly store: Database.Database
  ) {
    this.#file = join(folder, MARKER_FILE);
    store.exec('create table if not exists store_mark (id integer primary key, mark integer)');
  }

  /** Throws StoreLost where the store is behind its marker. */
  check(): void {
    const [had, has] = [this.#beside(), this.#inside()];
    if (has < had) throw new StoreLost(had, has);
  }

  /** On a full disk it stays as it is: what was deleted there must still go. */
  countOn(): void {
    const next = Math.max(this.#beside(), this.#inside()) + 1;
    try {
      this.store.prepare('insert or replace into store_mark (id, mark) values (1, ?)').run(next);
      // Whole or not at all: half a number would be another one.
      writeFileSync(`${this.#file}.new`, `${next}\n`, { mode: 0o600 });
      renameSync(`${this.#file}.new`, this.#file);
    } catch (error) {
      if (!isDiskFull(error)) throw error;
    }
  }

  #beside(): number {
    return existsSync(this.#file) ? Number(readFileSync(this.#file, 'utf8')) : 0;
  }

  #inside(): number {
    const row = this.store.prepare('select mark from store_mark where id = 1').get();
    return (row as { mark: number } | undefined)?.mark ?? 0;
  }
}
