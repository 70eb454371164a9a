import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ensureBuilt } from '../../scripts/build.mjs';

const KIB = 1024;
/** What a page may fetch of JavaScript before it can be used, as sent: two thirds of a second at 1.5 Mbit/s. */
const MOST_KIB = 120;
/**
 * Pages that weigh more: they hold several pages in one, or run the model themselves. The bound is a
 * twentieth above what each weighed when it was last looked into; what grows by more is to be split.
 */
const HEAVIER_KIB: Record<string, number> = {
  '/': 143,
  '/card': 147,
  '/clinic': 135,
  '/explore': 155,
  '/guide/[id]': 169,
  '/guide/[id]/[client]': 151,
  '/guide/new': 169,
  '/guide/task': 185,
  '/homework': 184,
  '/lessons/[slug]': 152,
  '/plan': 124,
  '/ruler': 141,
  '/ruler/practise': 163,
  '/try': 144
};

test('no page fetches more JavaScript before it can be used than it may', async () => {
  const build = process.env.FELTFOOT_BUILD || (await ensureBuilt());
  const file = join(build, 'page-weight.json');
  const weights = Object.entries<number>(JSON.parse(readFileSync(file, 'utf8')));
  expect(weights.length).toBeGreaterThan(40);
  const tooMuch = weights
    .map(([route, bytes]) => ({ route, kib: bytes / KIB, most: HEAVIER_KIB[route] ?? MOST_KIB }))
    .filter(({ kib, most }) => kib > most);
  expect(tooMuch).toEqual([]);
});
