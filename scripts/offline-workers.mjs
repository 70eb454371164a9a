import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * What a worker fetches for one of its jobs stands in no page's list of files, and so the service
 * worker would not keep it: adds it to the manifest, from which Kit makes that list.
 * @returns {import('vite').Plugin}
 */
export function offlineWorkers() {
  return {
    name: 'feltfoot-offline-workers',
    apply: 'build',
    writeBundle({ dir }, bundle) {
      const path = join(dir ?? '', '.vite', 'manifest.json');
      const files = Object.keys(bundle).filter((name) => /\/workers\/.*\.js$/.test(name));
      if (files.length === 0 || !existsSync(path)) return;
      const manifest = JSON.parse(readFileSync(path, 'utf8'));
      for (const file of files) manifest[file] ??= { file };
      writeFileSync(path, JSON.stringify(manifest, null, 2));
    }
  };
}
