import { chmodSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { DELETIONS_FILE } from './deletions';
import { describeError, log } from './log';
import { STORE_FILE } from './opened-store';
import { RESERVE_FILE } from './reserve';
import { MARKER_FILE } from './store-marker';

/** What a store is made of, in its folder. */
const FILES = [
  STORE_FILE,
  `${STORE_FILE}-wal`,
  `${STORE_FILE}-shm`,
  MARKER_FILE,
  DELETIONS_FILE,
  RESERVE_FILE
];
const OTHERS = 0o077;

/**
 * Closes a store's files to all but their owner, whatever the folder lets others do: a version before made
 * them as others' files are, and a copy that is put back may be open too. Where they are somebody else's,
 * or cannot be written, it says so and leaves them.
 */
export function closeToOthers(folder: string): void {
  for (const name of FILES) {
    const found = statSync(join(folder, name), { throwIfNoEntry: false });
    if (!found || (found.mode & OTHERS) === 0) continue;
    try {
      chmodSync(join(folder, name), 0o600);
    } catch (fault) {
      log('others may read the store', describeError(fault));
    }
  }
}
