import { expect, test } from 'vitest';
import { queryBatcher } from '../../src/lib/server/query-batcher';
import type { Db } from '../../src/lib/server/store';

/** What is asked for is not looked at here. */
const db = {} as Db;

function counted(how = {}) {
  const sizes: number[] = [];
  const double = queryBatcher(async (_db, asks: number[]) => {
    sizes.push(asks.length);
    return asks.map((ask) => 2 * ask);
  }, how);
  return { sizes, ask: (n: number) => double(db, n) };
}

test('what comes while others are gathered goes along with them, each with its own answer', async () => {
  const { sizes, ask } = counted({ isForDisk: true });
  const first = [ask(1), ask(2)];
  await Promise.all(first);
  // One after the other, in turns of their own, as requests come.
  const later: Promise<number>[] = [];
  for (let n = 3; n < 7; n++) {
    later.push(ask(n));
    await new Promise((next) => setImmediate(next));
  }
  expect(await Promise.all([...first, ...later])).toEqual([2, 4, 6, 8, 10, 12]);
  expect(sizes).toEqual([2, 4]);
});

test('who comes alone, one thing after the other, is answered by a statement each', async () => {
  const { sizes, ask } = counted();
  for (let n = 1; n < 4; n++) expect(await ask(n)).toBe(2 * n);
  expect(sizes).toEqual([1, 1, 1]);
});
