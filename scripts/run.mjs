import { spawn } from 'node:child_process';
import { constants, setPriority } from 'node:os';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Runs a program in the project's root and waits for it.
 * @param {string} program
 * @param {string[]} args
 * @param {{ env?: Record<string, string | undefined>, quiet?: boolean, timeoutMs?: number,
 *   isFiller?: boolean, signal?: AbortSignal }} [how]
 *   quiet: its output is kept back, and handed over instead of shown; isFiller: it takes what time the
 *   cores have left; signal: stops it.
 * @returns {Promise<{ code: number, output: string }>} A signalled program has code 1.
 */
export function run(
  program,
  args,
  { env = {}, quiet = false, timeoutMs, isFiller = false, signal } = {}
) {
  return new Promise((resolve) => {
    const child = spawn(program, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', quiet ? 'pipe' : 'inherit', quiet ? 'pipe' : 'inherit'],
      timeout: timeoutMs,
      signal
    });
    if (isFiller && child.pid) setPriority(child.pid, constants.priority.PRIORITY_LOW);
    let output = '';
    // A child outlives us when only we are signalled, so it is told to stop too.
    const pass = (/** @type {NodeJS.Signals} */ signal) => child.kill(signal);
    const signals = /** @type {const} */ (['SIGINT', 'SIGTERM']);
    for (const signal of signals) process.on(signal, pass);
    child.stdout?.on('data', (chunk) => (output += chunk));
    child.stderr?.on('data', (chunk) => (output += chunk));
    child.on('error', (error) => resolve({ code: 127, output: output + error.message }));
    child.on('close', (code) => {
      for (const signal of signals) process.off(signal, pass);
      resolve({ code: code ?? 1, output });
    });
  });
}

/**
 * Runs a program that npm installed for us, without npx in between.
 * @param {string} entry Its script below node_modules, as 'vite/bin/vite.js'.
 * @param {string[]} args
 * @param {Parameters<typeof run>[2]} [how]
 */
export function runInstalled(entry, args, how) {
  return run(process.execPath, [`${root}/node_modules/${entry}`, ...args], how);
}
