import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { CHECKED_SEEDS, drawCheckedSeed, LAST_CHECKED_SEED } from '../../src/lib/course/items';

test('seeds are drawn from first to last of the checked ones, and from no others', () => {
  expect(drawCheckedSeed(() => 0)).toBe(1);
  expect(drawCheckedSeed(() => 1 - Number.EPSILON)).toBe(LAST_CHECKED_SEED);
  const shares = Array.from({ length: 200 }, (_, i) => i / 200);
  const drawn = new Set(shares.map((share) => drawCheckedSeed(() => share)));
  expect([...drawn].sort((a, b) => a - b)).toEqual(CHECKED_SEEDS);
});

test('`npm run check:items` checks these very seeds when none are named', () => {
  // A generator that runs nothing: what is looked at is how many seeds the command takes.
  const args = ['node_modules/tsx/dist/cli.mjs', 'scripts/check-items.ts', '--generator', 'mood'];
  const said = execFileSync(process.execPath, args, { encoding: 'utf8' });
  expect(said).toContain(`mood                   ${LAST_CHECKED_SEED} seeds, `);
});
