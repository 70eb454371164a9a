import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

test('each library has a reason, and what is written of them is what the lockfile says', () => {
  const args = ['scripts/dependencies.mjs', '--check'];
  const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  expect({ stdout, stderr }).toMatchObject({
    stdout: expect.stringContaining('are written down'),
    stderr: ''
  });
});
