import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { withLock } from './lock.mjs';
import { root, run } from './run.mjs';
import { say, since } from './say.mjs';

// Inside node_modules, so that deleting node_modules deletes the claim that it is complete.
const stampPath = join(root, 'node_modules', '.feltfoot-installed');

/** Native packages are built for one Node ABI, so another Node needs another install. */
function wantedStamp() {
  const lock = readFileSync(join(root, 'package-lock.json'));
  return `${createHash('sha256').update(lock).digest('hex')} abi ${process.versions.modules}`;
}

const readJson = (/** @type {string} */ path) => JSON.parse(readFileSync(path, 'utf8')).packages;

/** What the compile of the store leaves behind: without it, an install was broken off half-way. */
const storePath = join(root, 'node_modules', 'better-sqlite3/build/Release/better_sqlite3.node');

/** Whether someone ran npm by hand: npm's own record then agrees with the lockfile. */
function npmAgrees() {
  const record = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(record) || !existsSync(storePath) || existsSync(stampPath)) return false;
  const installed = readJson(record);
  return Object.entries(readJson(join(root, 'package-lock.json'))).every(
    ([path, wanted]) =>
      path === '' ||
      (installed[path] ? installed[path].version === wanted.version : wanted.optional)
  );
}

function isInstalled() {
  if (existsSync(stampPath) && readFileSync(stampPath, 'utf8') === wantedStamp()) return true;
  if (!npmAgrees()) return false;
  writeFileSync(stampPath, wantedStamp());
  return true;
}

/** Brings node_modules to what the lockfile says, if it is not there already. */
export async function ensureInstalled() {
  const { isCompiled } = await ensureUnpacked();
  await isCompiled;
}

/**
 * The first half of an install: the packages lie there, and all but the store works. The second is the
 * compile of the store, a minute of one core, beside which other cores can do what needs no store.
 * @returns {Promise<{ isCompiled: Promise<void> }>}
 */
export function ensureUnpacked() {
  return (unpacking ??= unpack());
}

/** @type {ReturnType<typeof unpack> | undefined} */
let unpacking;

async function unpack() {
  if (isInstalled()) return { isCompiled: Promise.resolve() };
  let unpacked = () => {};
  const isUnpacked = new Promise((resolve) => (unpacked = () => resolve(undefined)));
  const isCompiled = withLock('install', async () => {
    if (isInstalled()) return;
    const from = Date.now();
    say(
      'Installing what package-lock.json lists (the first time takes some minutes: the store is compiled)…'
    );
    await npm(['ci', '--include=dev', '--no-audit', '--no-fund', '--ignore-scripts']);
    unpacked();
    await npm(['rebuild'], { CFLAGS: `${STORE_FLAGS} ${process.env.CFLAGS ?? ''}` });
    writeFileSync(stampPath, wantedStamp());
    say(`Installed in ${since(from)}.`);
  });
  // Told where it is waited for, which may be after it failed.
  isCompiled.catch(() => {});
  await Promise.race([isUnpacked, isCompiled]);
  return { isCompiled };
}

/**
 * The package asks for -O3, which compiles three times as long. Rows are written and found a tenth slower than
 * by SQLite’s own -O2, which takes half a minute more of whoever starts for the first time.
 */
const STORE_FLAGS = '-O1';

/** @param {string[]} args @param {Record<string, string>} [env] */
async function npm(args, env) {
  // Under npm its own script is named, which also works where npm is a .cmd file.
  const script = process.env.npm_execpath;
  const isNpm = script?.endsWith('npm-cli.js');
  const { code, output } = await (isNpm
    ? run(process.execPath, [script, ...args], { quiet: true, env })
    : run('npm', args, { quiet: true, env }));
  if (code !== 0) throw new Error(`npm ${args[0]} failed:\n${output}`);
}
