import { spawn, spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** What never comes with a clone: git's own, and what .gitignore keeps out of it at the top. */
const NOT_CLONED = new Set([
  '.git',
  ...readFileSync(join(root, '.gitignore'), 'utf8')
    .split('\n')
    .map((line) => line.replace(/\/$/, ''))
    .filter((line) => line !== '')
]);

/** The files as they are now, in a folder of their own, with what is installed here and nothing else. */
export function freshClone(): string {
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-clone-'));
  const filter = (from: string) => !NOT_CLONED.has(relative(root, from));
  cpSync(root, folder, { recursive: true, filter });
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

/** Clones that are as they were made: to copy one takes as long as most commands do. */
const waiting: string[] = [];

/** A clone that is as it was made, for one command. */
export const takeClone = (): string => waiting.pop() ?? freshClone();

/** Takes away what a command made in a clone. @throws where it changed what came with it */
export function giveBack(folder: string): void {
  const came = new Set(readdirSync(root).filter((name) => !NOT_CLONED.has(name)));
  const made = readdirSync(folder).filter((name) => name !== 'node_modules' && !came.has(name));
  for (const name of made) remove(join(folder, name));
  const besides = [...NOT_CLONED].map((name) => `--exclude=${name}`);
  const { status, stdout } = spawnSync('diff', ['-rq', ...besides, root, folder]);
  if (status !== 0) throw new Error(`A command changed its clone:\n${stdout}`);
  waiting.push(folder);
}

/** When all commands were tried. */
export const removeClones = (): void => waiting.splice(0).forEach(remove);

/** Gives a clone the builds of another, which were made there from the same files. */
export function withBuilds(folder: string, built: string): void {
  mkdirSync(join(folder, '.feltfoot'), { recursive: true });
  symlinkSync(join(built, '.feltfoot', 'builds'), join(folder, '.feltfoot', 'builds'));
}

export const remove = (folder: string) => rmSync(folder, { recursive: true, force: true });

/** Settings of this run are not those of whoever has just cloned; the browser that was found may stay. */
function cleanEnvironment(folder: string): NodeJS.ProcessEnv {
  const ours = /^(FELTFOOT_(?!CHROMIUM)|VITEST|npm_|DATABASE_URL|NODE_ENV|TEST$|DEV$|PROD$|MODE$)/;
  const kept = Object.entries(process.env).filter(([name]) => !ours.test(name));
  return { ...Object.fromEntries(kept), FELTFOOT_DATA: join(folder, '.feltfoot', 'data') };
}

export interface Ended {
  /** Null where it was stopped by us. */
  code: number | null;
  output: string;
}

/**
 * Types a command in a clone.
 * @param until what it says when it serves: then `visit` is called with the address, and it is stopped
 */
export function typed(
  folder: string,
  command: string,
  { stdin = '', until, visit }: { stdin?: string; until?: RegExp; visit?: (url: string) => unknown }
): Promise<Ended> {
  // A group of its own: npm starts a shell that starts the program.
  const env = { ...cleanEnvironment(folder), PORT: '0' };
  const child = spawn(command, { cwd: folder, env, shell: true, detached: true });
  let output = '';
  let isUp = false;
  let failure: unknown = null;
  const stop = () => process.kill(-Number(child.pid), 'SIGTERM');
  const hear = async (chunk: Buffer) => {
    output += chunk;
    // Colours would stand between the words.
    const [, url] = (!isUp && until?.exec(stripVTControlCharacters(output))) || [];
    if (!url) return;
    isUp = true;
    await Promise.resolve(visit?.(url)).catch((error: unknown) => (failure = error));
    stop();
  };
  child.stdout.on('data', hear);
  child.stderr.on('data', hear);
  child.stdin.end(stdin);
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      if (failure) reject(failure as Error);
      else resolve({ code: isUp ? null : code, output });
    });
  });
}
