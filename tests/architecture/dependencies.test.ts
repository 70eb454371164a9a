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

test('where no registry answers, the audit says so and does not end well', () => {
  // The discard port: nobody listens there.
  const env = {
    ...process.env,
    npm_config_registry: 'http://127.0.0.1:9',
    npm_config_fetch_retries: '0'
  };
  const { stderr, status } = spawnSync(process.execPath, ['scripts/audit.mjs'], {
    cwd: root,
    env,
    encoding: 'utf8'
  });
  expect(stderr).toMatch(/^!!! NOT AUDITED: .*ECONNREFUSED/);
  expect(status).toBe(2);
});
