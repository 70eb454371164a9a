import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { StorePlace } from '../../src/lib/server/store';

interface Started {
  fresh: () => Promise<StorePlace>;
  stop: () => Promise<void>;
  /** Stops it under whoever uses it, and starts it again. */
  restart?: (how: 'fast' | 'immediate') => void;
}

/** A kind of store to run a suite on: a fresh, empty place, and how to be rid of it. */
export interface StoreKind {
  name: 'SQLite' | 'PostgreSQL';
  /** Reason why it cannot be had here, or null. */
  missing: string | null;
  start(): Promise<Started>;
}

const newFolder = (name: string) => mkdtempSync(join(tmpdir(), `feltfoot-${name}-`));

export const sqlite: StoreKind = {
  name: 'SQLite',
  missing: null,
  async start() {
    const folder = newFolder('sqlite');
    let made = 0;
    return {
      fresh: async () => ({ folder: join(folder, String(made++)) }),
      stop: async () => rmSync(folder, { recursive: true, force: true })
    };
  }
};

/** PostgreSQL's programs: on the path, or where Debian puts them. */
function postgresPrograms(): string | null {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort().reverse() : [];
  const found = versions.map((version) => join(debian, version, 'bin'));
  return (
    [...found, '/usr/bin', '/usr/local/bin'].find((p) => existsSync(join(p, 'initdb'))) ?? null
  );
}

/** PostgreSQL refuses to run as root; Debian's package brings a user for it. */
const asOther = process.getuid?.() === 0 ? ['runuser', '-u', 'postgres', '--'] : [];

function run(...command: string[]): void {
  const [program, ...args] = [...asOther, ...command];
  // Its server inherits the pipes and would keep them open for good, so there are none.
  execFileSync(program, args, { stdio: 'ignore', cwd: '/' });
}

function whyNoPostgres(): string | null {
  if (!postgresPrograms()) return 'PostgreSQL is not installed';
  if (asOther.length && spawnSync('id', ['postgres']).status !== 0) return 'no user postgres';
  return null;
}

/** An empty server’s files, made once for all suites of a process: making them takes seconds, a copy a part of one. */
let empty: string | null = null;

function emptyData(bin: string): string {
  if (empty) return empty;
  const folder = newFolder('postgres-empty');
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  chmodSync(folder, 0o777);
  const data = join(folder, 'data');
  run(join(bin, 'initdb'), '-D', data, '-U', 'feltfoot', '--auth=trust', '--no-sync');
  return (empty = data);
}

export const postgres: StoreKind = {
  name: 'PostgreSQL',
  missing: whyNoPostgres(),
  async start() {
    const bin = postgresPrograms() ?? '';
    const folder = newFolder('postgres');
    chmodSync(folder, 0o777);
    const data = join(folder, 'data');
    const socket = encodeURIComponent(folder);
    // No TCP: only who can reach the folder can reach the server, whatever else runs here.
    const options = `-c listen_addresses= -c unix_socket_directories=${folder}`;
    run('cp', '-R', emptyData(bin), data);
    run(join(bin, 'pg_ctl'), '-D', data, '-w', '-o', options, '-l', join(folder, 'log'), 'start');
    const urlOf = (name: string) => `postgres://feltfoot@/${name}?host=${socket}`;
    let made = 0;
    return {
      async fresh() {
        const name = `store${made++}`;
        const admin = new pg.Client({ connectionString: urlOf('postgres') });
        await admin.connect();
        await admin.query(`create database ${name}`);
        await admin.end();
        return { url: urlOf(name), folder };
      },
      restart(how) {
        run(join(bin, 'pg_ctl'), '-D', data, '-m', how, '-w', 'stop');
        run(
          join(bin, 'pg_ctl'),
          '-D',
          data,
          '-w',
          '-o',
          options,
          '-l',
          join(folder, 'log'),
          'start'
        );
      },
      async stop() {
        run(join(bin, 'pg_ctl'), '-D', data, '-m', 'immediate', 'stop');
        rmSync(folder, { recursive: true, force: true });
      }
    };
  }
};

if (postgres.missing) {
  console.warn(
    `\n!!! NOT TESTED ON POSTGRESQL: ${postgres.missing}. apt-get install postgresql !!!\n`
  );
}
export const storeKinds = [sqlite, postgres];
