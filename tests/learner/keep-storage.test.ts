import { expect, test, vi } from 'vitest';
import { emptyRecord } from '../../src/lib/wire';
import { anEntry } from '../practice/samples';
import { StorageKeeping } from '../../src/lib/learner/keep-storage';

const one = { ...emptyRecord(), entries: [anEntry('entry-of-one-morning')] };

function browser(isKept: boolean) {
  return { persisted: async () => isKept, persist: vi.fn(async () => true) };
}

test('a browser is asked to keep the record once there is something to lose, and once', async () => {
  const storage = browser(false);
  const keeping = new StorageKeeping(storage);
  await keeping.keep(emptyRecord());
  expect(storage.persist).not.toHaveBeenCalled();
  await keeping.keep(one);
  await keeping.keep(one);
  expect(storage.persist).toHaveBeenCalledTimes(1);
});

test('one that keeps it already, or cannot, is not asked', async () => {
  const storage = browser(true);
  await new StorageKeeping(storage).keep(one);
  expect(storage.persist).not.toHaveBeenCalled();
  await expect(new StorageKeeping(undefined).keep(one)).resolves.toBe(undefined);
});
