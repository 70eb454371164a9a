import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { root } from './run.mjs';
import { say } from './say.mjs';

// mkdir is the one call that tests and takes at once on every file system.
const folder = join(root, '.feltfoot');

/** A lock without a readable owner is given this long to get one before it counts as left behind. */
const ownerlessMs = 5000;

/** @param {string} path @returns {boolean} whether the lock's owner is gone */
function isStale(path) {
  try {
    const owner = Number(readFileSync(join(path, 'pid'), 'utf8'));
    process.kill(owner, 0);
    return false;
  } catch (error) {
    // EPERM: the owner lives, under another user.
    if (error.code === 'EPERM') return false;
    if (error.code === 'ESRCH') return true;
    const made = statSync(path, { throwIfNoEntry: false })?.mtimeMs;
    return made !== undefined && Date.now() - made > ownerlessMs;
  }
}

/**
 * Does some work while no other process of this checkout does the same.
 * @template T
 * @param {string} name
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withLock(name, work) {
  const path = join(folder, `${name}.lock`);
  mkdirSync(folder, { recursive: true });
  for (let told = false; ; await sleep(200)) {
    try {
      mkdirSync(path);
      break;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
    }
    if (isStale(path)) rmSync(path, { recursive: true, force: true });
    else if (!told) {
      say(`Another start is busy with the ${name}; waiting for it…`);
      told = true;
    }
  }
  writeFileSync(join(path, 'pid'), String(process.pid));
  try {
    return await work();
  } finally {
    rmSync(path, { recursive: true, force: true });
  }
}
