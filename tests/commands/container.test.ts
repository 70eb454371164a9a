import { spawn, spawnSync, type SpawnOptions } from 'node:child_process';
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

/** Runs it with no powers and nothing but the volume to write to. */
function shutIn(folder: string, data: string, command: string[]): string[] {
  const powers = '--bounding-set=-all --inh-caps=-all --no-new-privs';
  const who = `--reuid=${NOBODY} --regid=${NOBODY} --clear-groups`;
  const own = (path: string) => `mount --bind "${path}" "${path}"`;
  const mounts = [own('$0'), own('$1'), 'mount -o remount,bind,ro "$0"'];
  const run = `cd "$0" && shift && exec setpriv ${who} ${powers} "$@"`;
  return ['unshare', '-m', 'sh', '-c', [...mounts, run].join(' && '), folder, data, ...command];
}
const canShutIn = isRoot && spawnSync('unshare', ['-m', 'setpriv', '--version']).status === 0;

interface Served {
  port: string;
  /** Its code, once it was told to stop. */
  stop: () => Promise<number | null>;
  output: () => string;
}

async function served([program, ...args]: string[], how: SpawnOptions): Promise<Served> {
  const server = spawn(program, args, { ...how, stdio: ['ignore', 'pipe', 'pipe'] });
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
  const stop = async () => {
    server.kill('SIGTERM');
    return (await ended)[0];
  };
  return { port, stop, output: () => output };
}

/** By the health check of the container file. */
function healthOf(port: string, env: NodeJS.ProcessEnv) {
  const [, ...health] = commandOf(stepOf('HEALTHCHECK')).map((part) =>
    part.replace(`:${settings.PORT}/`, `:${port}/`)
  );
  const { status, stderr } = spawnSync(process.execPath, health, { env, ...user });
  return { status, stderr: `${stderr}` };
}

const ways = [
  { how: 'as a user who is not root', isShut: false },
  { how: 'with no powers and nothing but the volume to write to', isShut: true }
];
test.each(canShutIn ? ways : ways.slice(0, 1))(
  'what the container starts runs $how, is healthy, keeps its store in the volume, is backed up and stops when told',
  async ({ isShut }) => {
    await ensureBuilt();
    const { folder, data } = theirClone();
    const path = { PATH: process.env.PATH, HOME: folder };
    const env = { ...path, ...settings, PORT: '0', FELTFOOT_DATA: data };
    const command = [process.execPath, ...commandOf(stepOf('CMD')).slice(1)];
    const how = isShut ? { env } : { cwd: folder, env, ...user };
    const within = (asked: string[]) => (isShut ? shutIn(folder, data, asked) : asked);
    const { port, stop, output } = await served(within(command), how);
    expect(healthOf(port, env)).toEqual({ status: 0, stderr: '' });
    const [npm, ...args] = within(['npm', 'run', 'backup', '--', join(data, 'saved.jsonl')]);
    const backup = spawnSync(npm, args, { ...how, encoding: 'utf8' });
    expect(backup.status, backup.stderr).toBe(0);
    const owners = readdirSync(data).map((name) => statSync(join(data, name)).uid);
    expect(owners.length).toBeGreaterThan(0);
    expect(owners).not.toContain(0);
    expect(await stop(), output()).toBe(0);
    remove(folder);
  }
);
