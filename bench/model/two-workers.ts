import { fork, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { SWEEP_RUNS } from './cases';

const ROUNDS = 7;

/**
 * How many times sooner two workers have made a chart's sweep than one, by the clock, each at its best
 * of some rounds: only of use on a machine that has two cores to spare.
 */
export async function twoWorkersOverOne(): Promise<number> {
  const path = fileURLToPath(new URL('./worker.js', import.meta.url));
  const workers = [fork(path), fork(path)];
  try {
    await round(workers);
    const one_ms: number[] = [];
    const two_ms: number[] = [];
    for (let i = 0; i < ROUNDS; i++) {
      one_ms.push(await round(workers.slice(1)));
      two_ms.push(await round(workers));
    }
    return Math.min(...one_ms) / Math.min(...two_ms);
  } finally {
    workers.forEach((worker) => worker.kill());
  }
}

/** Makes the whole sweep, each of the workers every so many-th run of it. @returns ms by the clock */
async function round(workers: readonly ChildProcess[]): Promise<number> {
  const runs = Array.from({ length: SWEEP_RUNS }, (_, i) => i);
  const start = performance.now();
  await Promise.all(
    workers.map((worker, nth) => {
      const done = once(worker, 'message');
      worker.send(runs.filter((i) => i % workers.length === nth));
      return done;
    })
  );
  return performance.now() - start;
}
