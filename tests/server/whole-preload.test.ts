import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { importsOf, wholePreload } from '../../scripts/whole-preload.mjs';

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-preload-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** As the bundler calls it when all is written. */
function run(dir: string): void {
  const { writeBundle } = wholePreload() as unknown as {
    writeBundle: { handler: (given: { dir: string }) => void };
  };
  writeBundle.handler({ dir });
}

interface Chunk {
  file: string;
  isEntry?: boolean;
  imports?: string[];
  dynamicImports?: string[];
}

/**
 * A page that imports its parts, one of them by way of another and in a ring, and a model that is fetched
 * later; and a second page that only fetches later what the first is drawn with.
 */
const CHUNKS: Record<string, Chunk> = {
  'page.js': { file: 'p.js', isEntry: true, imports: ['part.js'], dynamicImports: ['later.js'] },
  'part.js': { file: 'a.js', imports: ['base.js'], dynamicImports: ['model.js'] },
  'base.js': { file: 'b.js', imports: ['part.js'] },
  'later.js': { file: 'l.js', imports: ['base.js', 'deep.js'] },
  'deep.js': { file: 'd.js' },
  'model.js': { file: 'm.js', dynamicImports: ['deep.js'] },
  'other.js': { file: 'o.js', isEntry: true, imports: ['base.js'], dynamicImports: ['part.js'] }
};

/** What the plugin makes of a list of chunks in a folder of that name. */
function written(name: string): typeof CHUNKS {
  const dir = join(folder, name);
  const path = join(dir, '.vite', 'manifest.json');
  mkdirSync(join(dir, '.vite'), { recursive: true });
  writeFileSync(path, JSON.stringify(CHUNKS));
  run(dir);
  return JSON.parse(readFileSync(path, 'utf8'));
}

test('a chunk’s imports are all there are behind it, once each, and none that is fetched later', () => {
  expect([...importsOf(CHUNKS, 'page.js')]).toEqual(['page.js', 'part.js', 'base.js']);
});

test('a page’s list names all that it is drawn with, and later ones last, where styles are looked for', () => {
  const made = written('client');
  expect(made['page.js']).toEqual({
    ...CHUNKS['page.js'],
    imports: ['part.js', 'base.js'],
    dynamicImports: ['later.js', 'model.js']
  });
  // Behind an import() for one page, drawn with at once for the other.
  expect(made['other.js'].imports).toEqual(['base.js', 'part.js']);
  expect(made['other.js'].dynamicImports).toEqual(['part.js', 'model.js']);
});

test('what is no page names nothing that comes later, and keeps the rest', () => {
  const made = written('client');
  expect(made['part.js']).toEqual({ ...CHUNKS['part.js'], dynamicImports: [] });
  expect(made['model.js']).toEqual({ file: 'm.js', dynamicImports: [] });
});

test('the server’s own list is left as it is', () => {
  expect(written('server')).toEqual(CHUNKS);
});

test('a build that wrote no list is no fault', () => {
  const dir = join(folder, 'empty', 'client');
  mkdirSync(dir, { recursive: true });
  expect(() => run(dir)).not.toThrow();
});
