import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path: string) => readFileSync(join(root, path), 'utf8');

describe('the container file', () => {
  const steps = read('deploy/Containerfile')
    .split('\n')
    .filter((line) => /^[A-Z]+ /.test(line));
  const last = steps.slice(steps.findLastIndex((step) => step.startsWith('FROM ')));

  test('runs as a user that is not root, and keeps its data in a volume', () => {
    const at = (what: string) => last.findIndex((step) => step.startsWith(what));
    expect(last[at('USER ')]).toBe('USER node');
    expect(at('USER ')).toBeLessThan(at('CMD '));
    expect(last).toContain('VOLUME /data');
    expect(last[at('ENV ')]).toContain('FELTFOOT_DATA=/data');
  });

  test('starts what is there by a command that is told to stop itself', () => {
    const [, command] = /^CMD (\[.*\])$/.exec(last[last.length - 1]) ?? [];
    const [program, script] = JSON.parse(command);
    expect(program).toBe('node');
    expect(existsSync(join(root, script))).toBe(true);
  });

  test('copies nothing that is made here, nor anybody’s data', () => {
    const ignored = read('.dockerignore').split('\n');
    const kept = ['node_modules', '.feltfoot', '.git', 'data', '.env*'];
    expect(ignored).toEqual(expect.arrayContaining(kept));
  });

  test('has a Node that the program runs on', () => {
    const versions = steps.flatMap((step) => /node:(\d+)/.exec(step)?.[1] ?? []).map(Number);
    expect(versions).toEqual([22, 22]);
  });
});

test('a container whose root is read-only is given a place for what its commands make on the way', () => {
  const blocks = [...read('docs/hosting.md').matchAll(/^```text\n([\s\S]*?)^```/gm)];
  const lines = blocks.flatMap(([, block]) => block.replace(/\\\n\s*/g, '').split('\n'));
  const runs = lines.filter((line) => line.startsWith('docker run '));
  expect(runs.length).toBeGreaterThan(1);
  for (const line of runs) expect(line).toContain(' --tmpfs /tmp ');
});

test('the unit of the service has no fault that systemd knows of', () => {
  const unit = join(root, 'deploy/feltfoot.service');
  const { error, stderr, status } = spawnSync('systemd-analyze', ['verify', '--man=no', unit], {
    encoding: 'utf8'
  });
  // A user, folders and units that stand on no machine but the server's are no fault of the file.
  const faults = (stderr ?? '')
    .split('\n')
    .filter(
      (line) => line.includes('feltfoot.service') && /unknown|fail|invalid|ignor/i.test(line)
    );
  expect(error ? [] : faults, `${status}`).toEqual([]);
  const text = read('deploy/feltfoot.service');
  for (const line of ['User=feltfoot', 'NoNewPrivileges=yes', 'ProtectSystem=strict']) {
    expect(text).toContain(`\n${line}\n`);
  }
});
