import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

const ROUTES = 'src/routes';

test('whoever cuts off the end of a page’s address is on a page', () => {
  const pages = readdirSync(ROUTES, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('+page.svelte'))
    .map(dirname);
  const parentsOf = (at: string): string[] =>
    at === '.' ? [] : [dirname(at), ...parentsOf(dirname(at))];
  const missing = [...new Set(pages.flatMap(parentsOf))].filter(
    (parent) => !existsSync(join(ROUTES, parent, '+page.svelte'))
  );
  expect(pages.length).toBeGreaterThan(30);
  expect(missing).toEqual([]);
});
