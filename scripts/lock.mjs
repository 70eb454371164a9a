import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { root } from './run.mjs';
import { say } from './say.mjs';

// mkdir is the one call that tests and takes at once on every file system.
const folder = join(root, '.feltfoot');

/** A lock without a readable owner is given this long to get one before it counts as left behind. */
const ownerlessMs = 5000;

/** Paths of the locks that this process holds. @type {Set<string>} */
const held = new Set();

/** @param {string} path @returns {boolean} whether the lock's owner is gone */
function isStale(path) {
  try {
    const owner = Number(readFileSync(join(path, 'pid'), 'utf8'));
    // Started anew, a container has the same first process: what bears its number was left behind.
    if (owner === process.pid) return !held.has(path);
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

/** Takes it, unless it is taken. @param {string} path @returns {'taken' | 'busy' | 'needless'} */
function take(path) {
  try {
    mkdirSync(folder, { recursive: true });
    mkdirSync(path);
    return 'taken';
  } catch (error) {
    // Where nothing can be written, no other writes either.
    if (error.code === 'EROFS') return 'needless';
    if (error.code !== 'EEXIST') throw error;
    return 'busy';
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
  for (let told = false; ; await sleep(200)) {
    const state = take(path);
    if (state === 'needless') return work();
    if (state === 'taken') break;
    if (isStale(path)) rmSync(path, { recursive: true, force: true });
    else if (!told) {
      say(`Another start is busy with the ${name}; waiting for it…`);
      told = true;
    }
  }
  held.add(path);
  writeFileSync(join(path, 'pid'), String(process.pid));
  try {
    return await work();
  } finally {
    rmSync(path, { recursive: true, force: true });
    held.delete(path);
  }
}
