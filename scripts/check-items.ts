/**
 * npm run check:items [-- --seeds 1-1000] [--generator mark-drag]
 * The seeds are, unless others are named, those from which clinics and homework draw.
 * Makes every generator's question for each seed and checks it from the model's runs: one right answer,
 * wrong ones beyond the band, words, the places of the keys, what is right without knowing anything, and what
 * stands behind each sentence.
 * A line a generator; exit 1 with faults.
 * Takes all cores: generators of one objective go together, as they ask about the same runs.
 */
import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { FIXED, GENERATORS, LAST_CHECKED_SEED } from '../src/lib/course/items';
import { claimedRunFaults } from '../src/lib/course/items/claimed';
import type { Checked, Task } from './check-items-worker';
import { flag, seedRange } from './seed-range';
import { joined, tellingFaults, toldIn, type Told } from './telling-words';

const KNOWN = ['--seeds', '--generator'];

async function main(args: readonly string[]): Promise<number> {
  const seeds = seedRange(flag(args, '--seeds', KNOWN, `1-${LAST_CHECKED_SEED}`));
  const only = flag(args, '--generator', KNOWN, '');
  const asked = GENERATORS.filter(({ id }) => only === '' || id === only);
  if (asked.length === 0)
    throw new RangeError(`--generator: there is none called ${JSON.stringify(only)}`);
  const tasks = [...new Set(asked.map(({ objective }) => objective))].map((about) => ({
    ids: asked.filter(({ objective }) => objective === about).map(({ id }) => id),
    seeds
  }));
  const told: Told[] = [toldIn(FIXED)];
  const faults = await Promise.all(
    Array.from({ length: Math.min(availableParallelism(), tasks.length) }, () =>
      worked(tasks, told)
    )
  );
  // Words that tell nothing in one row of questions may tell the answer over the whole bank.
  const telling = only === '' ? tellingFaults(joined(told)) : [];
  // What stands behind sentences are runs of their own, the same for every seed.
  const unshown = only === '' ? claimedRunFaults() : [];
  for (const fault of [...telling, ...unshown]) process.stderr.write(`the bank/${fault}\n`);
  const isClean = telling.length + unshown.length === 0 && faults.every((count) => count === 0);
  return isClean ? 0 : 1;
}

/** One core's share: takes tasks until none is left, adds to what options `told`. Resolves to the number of faults it met. */
function worked(tasks: Task[], told: Told[]): Promise<number> {
  const worker = fork(fileURLToPath(new URL('./check-items-worker.ts', import.meta.url)));
  return new Promise((resolve, reject) => {
    let faults = 0;
    const next = () => {
      const task = tasks.shift();
      if (task) return worker.send(task);
      worker.disconnect();
      resolve(faults);
    };
    worker.on('error', reject);
    worker.on('exit', (code) => {
      if (code !== 0) reject(new Error(`a worker ended with ${code ?? 'a signal'}`));
    });
    worker.on('message', (checked: Checked | 'done') => {
      if (checked === 'done') return next();
      faults += checked.faults.length;
      told.push(checked.told);
      report(checked);
    });
    next();
  });
}

function report({ id, asked, different, faults, places, longest, seconds }: Checked): void {
  for (const fault of faults) process.stderr.write(`${id}/${fault}\n`);
  const shares = places.map((count) => `${Math.round((100 * count) / asked)} %`);
  process.stdout.write(
    `${id.padEnd(22)} ${asked} seeds, ${different} different, ${faults.length} faults, ` +
      `${seconds} s` +
      (longest === null
        ? '\n'
        : `  keys ${shares.join(' ')}, the longest ${Math.round(100 * longest)} %\n`)
  );
}

main(process.argv.slice(2)).then(
  (code) => (process.exitCode = code),
  (error: unknown) => {
    process.stderr.write(`${error instanceof RangeError ? error.message : String(error)}\n`);
    process.exitCode = 2;
  }
);
