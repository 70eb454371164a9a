import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';

/** What a module declares and exports; `export … from` gives no new meaning. */
const DECLARED = /^export (?:async )?(?:function\*?|const|class|interface|type) (\w+)/gm;

/** @returns each exported name of these sources with the files that declare it */
function declaredIn(sources: readonly (readonly [file: string, text: string])[]) {
  const found = new Map<string, Set<string>>();
  for (const [file, text] of sources)
    for (const [, name] of text.matchAll(DECLARED))
      found.set(name, (found.get(name) ?? new Set()).add(file));
  return found;
}

const twice = (sources: readonly (readonly [string, string])[]) =>
  [...declaredIn(sources)]
    .filter(([, files]) => files.size > 1)
    .map(([name, files]) => `${name}: ${[...files].join(', ')}`);

test('an exported name has one meaning in all of src/lib', () => {
  const files = readdirSync('src/lib', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => [file, readFileSync(join('src/lib', file), 'utf8')] as const);
  expect(declaredIn(files).size).toBeGreaterThan(500);
  expect(twice(files)).toEqual([]);
});

/** Parts of a page that show the very thing whose name they bear. */
const SHOWN = [
  'CastSketch',
  'DayChoice',
  'Plot',
  'Question',
  'Report',
  'Round',
  'SentTry',
  'Thumb',
  'Today',
  'Trouble'
];

test('a part of a page bears no other thing’s name', () => {
  const files = readdirSync('src/lib', { recursive: true, encoding: 'utf8' });
  const modules = files
    .filter((file) => file.endsWith('.ts'))
    .map((file) => [file, readFileSync(join('src/lib', file), 'utf8')] as const);
  const declared = declaredIn(modules);
  const parts = files
    .filter((file) => file.endsWith('.svelte'))
    .map((file) => basename(file, '.svelte'));
  expect(parts.length).toBeGreaterThan(200);
  expect(parts.filter((name) => declared.has(name)).sort()).toEqual(SHOWN.sort());
});

test('a name that two modules declare is found, a re-export is not', () => {
  const sources = [
    ['model/grip.ts', 'export interface Grip {}'],
    ['sandbox/grip.ts', 'export class Grip {}'],
    ['model/index.ts', "export { type Grip } from './grip';"]
  ] as const;
  expect(twice(sources)).toEqual(['Grip: model/grip.ts, sandbox/grip.ts']);
});
