import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureUnpacked } from './install.mjs';
import { withLock } from './lock.mjs';
import { forgetOldBuilds } from './old-builds.mjs';
import { writePageWeights } from './page-weight.mjs';
import { root, runInstalled } from './run.mjs';
import { say, since } from './say.mjs';

const sources = [
  'src',
  'static',
  'docs/accessibility.md',
  'docs/model-errors.md',
  'docs/model.md',
  'docs/trade-check.md',
  'scripts/build.mjs',
  'scripts/compressed.mjs',
  'scripts/compute-thread.vite.mjs',
  'scripts/few-chunks.mjs',
  'scripts/merged-chunks.mjs',
  'scripts/node-adapter.mjs',
  'scripts/offline-workers.mjs',
  'scripts/page-weight.mjs',
  'scripts/static-adapter.mjs',
  'scripts/through-indexes.mjs',
  'scripts/trial-cut.mjs',
  'scripts/whole-preload.mjs',
  'package.json',
  'package-lock.json',
  'svelte.config.js',
  'tsconfig.json',
  'vite.config.ts'
];
const builds = join('.feltfoot', 'builds');

/** Older builds that stay, for going back and forth between two versions. */
const keptBuilds = 3;

/** @param {string} path relative to the root @returns {string[]} every file at or below it */
function filesBelow(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  const names = readdirSync(full).sort();
  return names.flatMap((name) => filesBelow(join(path, name)));
}

/** By content, not by date: a checkout dates every file anew, and a deleted file has no date. */
function sourceHash() {
  const hash = createHash('sha256');
  for (const path of sources.flatMap(filesBelow)) {
    hash
      .update(path)
      .update('\0')
      .update(readFileSync(join(root, path)))
      .update('\0');
  }
  return hash.digest('hex').slice(0, 16);
}

const stampOf = (/** @type {string} */ folder) => join(root, folder, '.feltfoot-built');
const isBuilt = (/** @type {string} */ folder) => existsSync(stampOf(folder));

/** The program of the compute thread: Kit's build knows but one program. */
async function buildThread(/** @type {string} */ folder) {
  const args = ['build', '--config', 'scripts/compute-thread.vite.mjs', '--outDir', folder];
  const { code, output } = await runInstalled('vite/bin/vite.js', args, { quiet: true });
  if (code !== 0) throw new Error(`The build of the compute thread failed:\n${output}`);
}

/**
 * Builds the app unless this very source has been built already. Each source has a folder of its
 * own, so that a build never changes beneath a running server.
 * @returns {Promise<string>} the build's folder, relative to the root
 */
export async function ensureBuilt() {
  // A build needs no store; whoever serves it does.
  const { isCompiled } = await ensureUnpacked();
  const folder = await builtFolder();
  await isCompiled;
  return folder;
}

/** @returns {Promise<string>} */
function builtFolder() {
  return withLock('build', async () => {
    const folder = join(builds, sourceHash());
    if (isBuilt(folder)) return folder;
    const from = Date.now();
    say('Building the app…');
    rmSync(join(root, folder), { recursive: true, force: true });
    const { code, output } = await runInstalled('vite/bin/vite.js', ['build'], {
      env: { FELTFOOT_BUILD_OUT: folder, NODE_ENV: 'production' },
      quiet: true
    });
    if (code !== 0) throw new Error(`The build failed:\n${output}`);
    await buildThread(folder);
    writePageWeights(join(root, folder));
    writeFileSync(stampOf(folder), '');
    forgetOldBuilds(join(root, builds), 1 + keptBuilds);
    say(`Built in ${since(from)}.`);
    return folder;
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await ensureBuilt().then(
    (folder) => say(`The build is in ${folder}.`),
    (error) => {
      console.error(error.message);
      process.exitCode = 1;
    }
  );
}
