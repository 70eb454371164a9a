import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ensureBuilt } from '../../scripts/build.mjs';

const KIB = 1024;
/** What a page may fetch of JavaScript before it can be used, as sent: two thirds of a second at 1.5 Mbit/s. */
const MOST_KIB = 120;
test('no page fetches more JavaScript before it can be used than it may', async () => {
  const build = process.env.FELTFOOT_BUILD || (await ensureBuilt());
  const file = join(build, 'page-weight.json');
  const weights = Object.entries<number>(JSON.parse(readFileSync(file, 'utf8')));
  expect(weights.length).toBeGreaterThan(40);
  const tooMuch = weights
    .map(([route, bytes]) => ({ route, kib: bytes / KIB }))
    .filter(({ kib }) => kib > MOST_KIB);
  expect(tooMuch).toEqual([]);
});
