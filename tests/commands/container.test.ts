import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ensureBuilt } from '../../scripts/build.mjs';
import { freshClone, remove, root, withBuilds } from './clone';

const steps = readFileSync(join(root, 'deploy/Containerfile'), 'utf8').split('\n');
/** What stands behind the last step of that name. */
function stepOf(name: string): string {
  const step = steps.findLast((line) => line.startsWith(`${name} `));
  if (!step) throw new Error(`The container file has no ${name}.`);
  return step.slice(name.length + 1);
}
const commandOf = (text: string): string[] => JSON.parse(text.slice(text.indexOf('[')));
const settings = Object.fromEntries(
  stepOf('ENV')
    .split(' ')
    .map((pair) => pair.split('='))
);

/** Somebody who owns nothing, where these tests run as root; else who runs them. */
const NOBODY = 65_534;
const isRoot = process.getuid?.() === 0;
const user = isRoot ? { uid: NOBODY, gid: NOBODY } : {};

/** A copy of the program that is theirs, as the container's is. */
function theirClone(): { folder: string; data: string } {
  const folder = freshClone();
  withBuilds(folder, root);
  const data = join(folder, 'volume');
  mkdirSync(data);
  chmodSync(folder, 0o755);
  // Of a link, the link itself: what it leads to stays whose it is.
  if (isRoot) spawnSync('chown', ['-Rh', `${NOBODY}:${NOBODY}`, folder]);
  return { folder, data };
}

test('what the container starts runs as a user who is not root, is healthy, keeps its store in the volume and stops when told', async () => {
  await ensureBuilt();
  const { folder, data } = theirClone();
  const path = { PATH: process.env.PATH, HOME: folder };
  const env = { ...path, ...settings, PORT: '0', FELTFOOT_DATA: data };
  const [, ...start] = commandOf(stepOf('CMD'));
  const server = spawn(process.execPath, start, { cwd: folder, env, ...user });
  const ended = once(server, 'close');
  let output = '';
  const port = await new Promise<string>((resolve, reject) => {
    const hear = (chunk: Buffer) => {
      output += chunk;
      const [, found] = /localhost:(\d+)/.exec(output) ?? [];
      if (found) resolve(found);
    };
    server.stdout.on('data', hear);
    server.stderr.on('data', hear);
    void ended.then(() => reject(new Error(output)));
  });
  const [, ...health] = commandOf(stepOf('HEALTHCHECK')).map((part) =>
    part.replace(`:${settings.PORT}/`, `:${port}/`)
  );
  const { status, stderr } = spawnSync(process.execPath, health, { env, ...user });
  expect({ status, stderr: `${stderr}` }).toEqual({ status: 0, stderr: '' });
  const owners = readdirSync(data).map((name) => statSync(join(data, name)).uid);
  expect(owners.length).toBeGreaterThan(0);
  expect(owners).not.toContain(0);
  server.kill('SIGTERM');
  expect((await ended)[0], output).toBe(0);
  remove(folder);
});
