import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openFile } from '../../src/lib/server/sqlite-store';

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-store-file-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('a store in a folder that others may read is its owner’s alone, its log too', () => {
  chmodSync(folder, 0o755);
  const file = openFile(folder);
  file.exec('CREATE TABLE kept (word TEXT)');
  const modes = readdirSync(folder).map((name) => statSync(join(folder, name)).mode & 0o777);
  file.close();
  expect(modes.length).toBeGreaterThanOrEqual(2);
  expect(modes).toEqual(modes.map(() => 0o600));
});
