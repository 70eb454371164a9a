import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isServed } from '../server/served.mjs';

/**
 * Deletes builds but for the newest few and those from which a server is running. To be called under
 * the lock of the build: another's build that is under way is the newest or not begun.
 * @param {string} folder of all builds
 * @param {number} kept how many of the newest stay
 */
export function forgetOldBuilds(folder, kept) {
  const madeAt = (/** @type {string} */ path) => statSync(path).mtimeMs;
  const byAge = readdirSync(folder)
    .map((name) => join(folder, name))
    .sort((a, b) => madeAt(b) - madeAt(a));
  for (const path of byAge.slice(kept)) {
    if (!isServed(path)) rmSync(path, { recursive: true, force: true });
  }
}
