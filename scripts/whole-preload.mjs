import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** @typedef {{ isEntry?: boolean, imports?: string[], dynamicImports?: string[] }} Chunk */

/**
 * A page names all that it is drawn with, so that the browser fetches it at once. Kit forgets, of what a
 * page imports, whatever it met before behind an import() (kit/src/exports/vite/build/utils.js, `seen`):
 * that came a round trip later. So the list that Kit goes by says of each entry all that it imports, and
 * only then, of them all, what stands behind an import(): there Kit looks for styles.
 * @returns {import('vite').Plugin}
 */
export function wholePreload() {
  return {
    name: 'whole-preload',
    apply: 'build',
    writeBundle: {
      order: 'pre',
      handler({ dir = '' }) {
        const path = join(dir, '.vite', 'manifest.json');
        if (!dir.endsWith('client') || !existsSync(path)) return;
        const whole = withWholeEntries(JSON.parse(readFileSync(path, 'utf8')));
        writeFileSync(path, JSON.stringify(whole, null, 2));
      }
    }
  };
}

/** @param {Record<string, Chunk>} manifest */
function withWholeEntries(manifest) {
  const changed = Object.entries(manifest).map(([key, chunk]) => {
    if (!chunk.isEntry) return [key, { ...chunk, dynamicImports: [] }];
    const all = [...importsOf(manifest, key)];
    const behind = all.flatMap((one) => manifest[one].dynamicImports ?? []);
    return [key, { ...chunk, imports: all.slice(1), dynamicImports: [...new Set(behind)] }];
  });
  return Object.fromEntries(changed);
}

/** A chunk and all that it imports. @param {Record<string, Chunk>} manifest @param {string} from */
export function importsOf(manifest, from) {
  const all = new Set([from]);
  // A set that grows while it is gone through hands out what was added, too.
  for (const key of all) {
    for (const next of manifest[key].imports ?? []) all.add(next);
  }
  return all;
}
