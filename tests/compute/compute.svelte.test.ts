import { afterEach, describe, expect, test } from 'vitest';
import { Asker, inPagePort } from '../../src/lib/compute';
import { workerPort } from '../../src/lib/compute/browser';
import type { HostPort } from '../../src/lib/compute/messages';
import { findLesson, loadLessons } from '../../src/lib/course';
import { itemOf } from '../../src/lib/course/items';
import { solveCorrection } from '../../src/lib/scoring';

const [challenge] = findLesson('one-foot', loadLessons())?.challenges ?? [];
const QUESTION = { item: 'mark-drag', seed: 7 };

const workers: Worker[] = [];
function openWorker(): HostPort {
  const address = new URL('./in-test.worker.ts', import.meta.url);
  const worker = new Worker(address, { type: 'module' });
  workers.push(worker);
  return workerPort(worker);
}
const openInPage = () =>
  inPagePort({ slice_ms: 8, breathe: () => new Promise((next) => setTimeout(next)) });
const openNone = () => workerPort(new Worker('/no-such-worker.js', { type: 'module' }));

const again = 1;
let asker: Asker;

afterEach(() => {
  asker.close();
  workers.splice(0);
});

describe.each([
  ['a real worker', openWorker],
  ['the page itself, in slices', openInPage]
])('in %s', (_, open) => {
  test('a correction and a question come to the same as at once, and tell how far they are', async () => {
    asker = new Asker([open], again);
    const shares: number[] = [];
    const correction = asker.ask('correct', challenge, { onprogress: (s) => shares.push(s) });
    const question = asker.ask('question', QUESTION);
    expect(await correction).toEqual(solveCorrection(challenge));
    expect(await question).toEqual(itemOf(QUESTION.item, QUESTION.seed));
    expect(shares.length).toBeGreaterThan(10);
  });

  test('a cancelled correction tells nothing more, and what came after it is done', async () => {
    asker = new Asker([open], again);
    const stop = new AbortController();
    let told = 0;
    const correction = asker.ask('correct', challenge, {
      signal: stop.signal,
      onprogress: () => {
        if (++told === 2) stop.abort();
      }
    });
    const question = asker.ask('question', QUESTION);
    await expect(correction).rejects.toThrow(/abort/i);
    expect(await question).toMatchObject({ source: QUESTION.item });
    expect(told).toBe(2);
  });
});

test('a worker that dies is made anew, and goes on with what it had', async () => {
  asker = new Asker([openWorker], again);
  let hasDied = false;
  const correction = asker.ask('correct', challenge, {
    onprogress: () => {
      if (hasDied) return;
      hasDied = true;
      workers[0].dispatchEvent(new ErrorEvent('error'));
    }
  });
  expect(await correction).toEqual(solveCorrection(challenge));
  expect(workers).toHaveLength(2);
});

test('where no worker can be had, the page does it', async () => {
  asker = new Asker([openNone, openInPage], again);
  expect(await asker.ask('question', QUESTION)).toMatchObject({ source: QUESTION.item });
});
