import type { Kysely } from 'kysely';
import type pg from 'pg';
import type { Tables } from './tables';

/** The store in a folder; -wal and -shm beside it belong to it. */
export const STORE_FILE = 'feltfoot.sqlite';

export type Db = Kysely<Tables>;

export interface Store {
  readonly kind: 'sqlite' | 'postgres';
  readonly db: Db;
  /** Only PostgreSQL has one: connections that other nodes can be heard on. */
  readonly pool: pg.Pool | null;
  close(): Promise<void>;
  /**
   * Does work that deletes, so that it works on a full disk and leaves no byte behind. The work may be
   * done twice.
   */
  deleting<T>(work: () => Promise<T>): Promise<T>;
  /**
   * Brings out what was noted of deletions, and empties the log of what was written, if nobody reads it.
   * @returns whether it is empty
   */
  checkpoint(): Promise<boolean>;
  /** Keeps room on the disk for deleting. */
  keepReserve(): void;
}
