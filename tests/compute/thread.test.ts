import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Asker } from '../../src/lib/compute';
import { findLesson, loadLessons } from '../../src/lib/course';
import { itemOf } from '../../src/lib/course/items';
import { solveCorrection } from '../../src/lib/scoring';
import { threadPort } from '../../src/lib/server/compute';

const [challenge] = findLesson('one-foot', loadLessons())?.challenges ?? [];
const QUESTION = { item: 'mark-drag', seed: 7 };
const folder = mkdtempSync(join(tmpdir(), 'feltfoot-compute-'));
const threads: Worker[] = [];

function asking(again: number) {
  const open = () => {
    const thread = new Worker(join(folder, 'compute-thread.js'));
    threads.push(thread);
    return threadPort(thread);
  };
  return new Asker([open], again);
}

beforeAll(async () => {
  await build({
    configFile: 'scripts/compute-thread.vite.mjs',
    logLevel: 'silent',
    build: { outDir: folder }
  });
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
});

afterAll(async () => {
  await Promise.all(threads.map((thread) => thread.terminate()));
  rmSync(folder, { recursive: true });
});

describe('a real thread, as the server has it', () => {
  test('comes to the same as at once, and tells how far it is', async () => {
    const asker = asking(0);
    const shares: number[] = [];
    const correction = asker.ask('correct', challenge, { onprogress: (s) => shares.push(s) });
    const question = asker.ask('question', QUESTION);
    expect(await correction).toEqual(solveCorrection(challenge));
    expect(await question).toEqual(itemOf(QUESTION.item, QUESTION.seed));
    expect(shares.length).toBeGreaterThan(10);
    asker.close();
  });

  test('stops what is cancelled and does what comes after it', async () => {
    const asker = asking(0);
    const stop = new AbortController();
    let told = 0;
    const correction = asker.ask('correct', challenge, {
      signal: stop.signal,
      onprogress: () => ++told === 2 && stop.abort()
    });
    const question = asker.ask('question', QUESTION);
    await expect(correction).rejects.toThrow(/abort/i);
    expect(await question).toMatchObject({ source: QUESTION.item });
    expect(told).toBe(2);
    asker.close();
  });

  test('is made anew when it dies, and goes on with what it had', async () => {
    const asker = asking(1);
    const before = threads.length;
    let hasDied = false;
    const correction = asker.ask('correct', challenge, {
      onprogress: () => {
        if (!hasDied) void threads[before].terminate();
        hasDied = true;
      }
    });
    expect(await correction).toEqual(solveCorrection(challenge));
    expect(threads).toHaveLength(before + 2);
    asker.close();
  });
});
