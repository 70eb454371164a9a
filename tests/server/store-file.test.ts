import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openFile } from '../../src/lib/server/sqlite-store';
import { openStore } from '../../src/lib/server/store';

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-store-file-'));
afterAll(() => rmSync(folder, { recursive: true }));

const modesIn = (where: string) =>
  new Map(readdirSync(where).map((name) => [name, statSync(join(where, name)).mode & 0o777]));

test('a store in a folder that others may read is its owner’s alone, its log too', () => {
  chmodSync(folder, 0o755);
  const file = openFile(folder);
  file.exec('CREATE TABLE kept (word TEXT)');
  const modes = [...modesIn(folder).values()];
  file.close();
  expect(modes.length).toBeGreaterThanOrEqual(2);
  expect(modes).toEqual(modes.map(() => 0o600));
});

test('a store that others may read, of an older version or copied back, is closed to them when opened', async () => {
  const old = mkdtempSync(join(folder, 'old-'));
  const before = await openStore({ folder: old });
  before.keepReserve();
  writeFileSync(join(old, 'feltfoot.deletions'), '');
  writeFileSync(join(old, 'of-somebody-else'), '');
  for (const name of readdirSync(old)) chmodSync(join(old, name), 0o644);
  // As after a kill: its log and the map of it lie there.
  expect(readdirSync(old)).toEqual(
    expect.arrayContaining(['feltfoot.sqlite-wal', 'feltfoot.sqlite-shm'])
  );
  const again = await openStore({ folder: old });
  const { 'of-somebody-else': others, ...ours } = Object.fromEntries(modesIn(old));
  await again.close();
  await before.close();
  expect(others).toBe(0o644);
  expect(Object.keys(ours)).toHaveLength(6);
  for (const [name, mode] of Object.entries(ours)) expect(mode, name).toBe(0o600);
});
