import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ensureBuilt } from '../../scripts/build.mjs';

test('every script, style and font of the app, also of its workers, is kept at the first visit', async () => {
  const build = process.env.FELTFOOT_BUILD || (await ensureBuilt());
  const client = join(build, 'client');
  const kept = readFileSync(join(client, 'service-worker.js'), 'utf8');
  const files = readdirSync(client, { recursive: true, encoding: 'utf8' })
    .map((file) => `/${file.replaceAll('\\', '/')}`)
    .filter((file) => /\.(js|css|woff2)$/.test(file) && file !== '/service-worker.js');
  expect(files.length).toBeGreaterThan(100);
  expect(files.filter((file) => !kept.includes(file))).toEqual([]);
});
