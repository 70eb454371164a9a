import { closeSync, existsSync, fsyncSync, openSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Deleting takes room first: a log of what changes. On a full disk it is this file's. It holds what a
 * client’s tries at their longest come to; larger deletions go part by part.
 */
const RESERVE_BYTES = 4 * 1024 * 1024;

export const RESERVE_FILE = 'reserve-for-deleting';

/** Room on the disk that is kept for deleting, so that who wishes to be forgotten is, also when it is full. */
export class Reserve {
  readonly #file: string;

  /** @param folder of the store; without one there is nothing to keep room in */
  constructor(private readonly folder: string) {
    this.#file = join(folder, RESERVE_FILE);
  }

  give(): void {
    if (this.folder) rmSync(this.#file, { force: true });
  }

  /** Keeps it where there is room for it, and leaves it for later where there is none. */
  fill(): void {
    if (!this.folder || existsSync(this.#file)) return;
    try {
      const file = openSync(this.#file, 'wx', 0o600);
      try {
        writeSync(file, Buffer.alloc(RESERVE_BYTES));
        fsyncSync(file);
      } finally {
        closeSync(file);
      }
    } catch {
      this.give();
    }
  }
}
