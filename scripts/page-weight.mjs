import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './run.mjs';

const server = join(root, '.svelte-kit', 'output', 'server');

const client = join(root, '.svelte-kit', 'output', 'client');

/**
 * These files and all that they import, as the bundler wrote it down. What Kit lists of a page is less:
 * it leaves out what it met before behind an import() (kit/src/exports/vite/build/utils.js, `seen`).
 * @param {Iterable<string>} files @returns {Set<string>}
 */
function withImports(files) {
  const manifest = JSON.parse(readFileSync(join(client, '.vite', 'manifest.json'), 'utf8'));
  /** @type {Map<string, { file: string, imports?: string[] }>} */
  const byFile = new Map(Object.values(manifest).map((chunk) => [chunk.file, chunk]));
  const all = new Set(files);
  // A set that grows while it is gone through hands out what was added, too.
  for (const file of all) {
    for (const key of byFile.get(file)?.imports ?? []) all.add(manifest[key].file);
  }
  return all;
}

/** @param {string} text @param {RegExp} pattern @returns {string[]} the list of strings it captures */
const listIn = (text, pattern) => JSON.parse(pattern.exec(text)?.[1] ?? '[]');

/** What a page fetches before it is alive: layout and page, with all that they import. */
function filesByRoute() {
  const manifest = readFileSync(join(server, 'manifest-full.js'), 'utf8');
  const start = listIn(manifest, /client: \{.*?imports:(\[[^\]]*\])/);
  const nodes = readdirSync(join(server, 'nodes')).map((name) => {
    const text = readFileSync(join(server, 'nodes', name), 'utf8');
    const files = listIn(text, /export const imports = (\[.*\]);/);
    return /** @type {const} */ ([Number.parseInt(name), files]);
  });
  const filesOf = new Map(nodes);
  const pages = manifest.matchAll(
    /id: "([^"]+)",[^{}]*(?:\{[^{}]*\}[^{}]*)*?page: \{ layouts: \[([^\]]*)\], errors: \[[^\]]*\], leaf: (\d+) \}/g
  );
  return [...pages].map(([, route, layouts, leaf]) => {
    const used = [...layouts.split(',').filter(Boolean), leaf].map(Number);
    const listed = [...start, ...used.flatMap((node) => filesOf.get(node) ?? [])];
    return /** @type {const} */ ([route, [...withImports(listed)]]);
  });
}

/**
 * Writes page-weight.json into a build: JavaScript that each page fetches before it can be used, by
 * route, as sent (brotli), bytes.
 * @param {string} folder
 */
export function writePageWeights(folder) {
  const sent = (/** @type {string} */ file) => statSync(join(folder, 'client', `${file}.br`)).size;
  const weights = filesByRoute().map(([route, files]) => [
    route,
    files.filter((file) => file.endsWith('.js')).reduce((sum, file) => sum + sent(file), 0)
  ]);
  if (weights.length === 0) throw new Error('The build names no page.');
  writeFileSync(
    join(folder, 'page-weight.json'),
    JSON.stringify(Object.fromEntries(weights), null, 1)
  );
}
