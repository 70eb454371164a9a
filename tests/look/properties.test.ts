import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** What components are told by others, or set by script. */
const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(css|svelte|html)$/.test(name))
  .map((name) => ({ name, text: readFileSync(`src/${name}`, 'utf8') }));

test('every property that a style asks for is set somewhere: an unknown one undoes its whole line', () => {
  const all = files.map(({ text }) => text).join('\n');
  const set = new Set(
    [...all.matchAll(/(?:style:|@property\s+)?(--[\w-]+)\s*(?::|=|\{)/g)].map((hit) => hit[1])
  );
  const asked = files.flatMap(({ name, text }) =>
    [...text.matchAll(/var\((--[\w-]+)\)/g)].map((hit) => `${name}: ${hit[1]}`)
  );
  expect(asked.length).toBeGreaterThan(500);
  expect(asked.filter((one) => !set.has(one.split(': ')[1]))).toEqual([]);
});
