import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { withLock } from '../../scripts/lock.mjs';
import { root } from '../../scripts/run.mjs';

const name = `in-a-test-${process.pid}`;
const path = join(root, '.feltfoot', `${name}.lock`);

test('a lock that an earlier process of the same number left behind holds nobody up', async () => {
  mkdirSync(path, { recursive: true });
  writeFileSync(join(path, 'pid'), String(process.pid));
  expect(await withLock(name, async () => 'done')).toBe('done');
  expect(existsSync(path)).toBe(false);
});

test('a lock that this process holds holds it up until it is given back', async () => {
  const order: string[] = [];
  let giveBack = () => {};
  const first = withLock(name, async () => {
    await new Promise<void>((resolve) => (giveBack = resolve));
    order.push('first');
  });
  const second = withLock(name, async () => void order.push('second'));
  await new Promise((resolve) => setTimeout(resolve, 500));
  expect(order).toEqual([]);
  giveBack();
  await Promise.all([first, second]);
  expect(order).toEqual(['first', 'second']);
});
