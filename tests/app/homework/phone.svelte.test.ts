import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ClientPhone } from '../../../src/lib/app/homework/phone.svelte';
import { HomeworkStore } from '../../../src/lib/app/homework/homework-store';
import { RETRY_MS } from '../../../src/lib/connection';

const SHARE = 'a-share-that-is-busy';
const busy = () => Response.json({ message: 'Busy.' }, { status: 503 });
const gone = () => Response.json({ message: 'No such homework.' }, { status: 404 });

beforeEach(() => void vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] }));
afterEach(async () => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  const store = await HomeworkStore.open();
  await store.forget(SHARE);
  store.close();
});

/** How often the homework was asked for: when it was begun, and after two waits. */
async function asked(answer: () => Response): Promise<number[]> {
  const fetched = vi.spyOn(globalThis, 'fetch').mockImplementation(async () => answer());
  const phone = new ClientPhone();
  const close = phone.open(SHARE);
  await vi.waitFor(() => expect(phone.isReady).toBe(true));
  await phone.enter(SHARE, 'Ina');
  const counts = [fetched.mock.calls.length];
  for (let wait = 0; wait < 2; wait++) {
    vi.advanceTimersByTime(RETRY_MS.homework);
    await phone.sync();
    counts.push(fetched.mock.calls.length);
  }
  const { trouble } = phone;
  close();
  expect(trouble).not.toBe('');
  return counts;
}

test('homework that could not be had when it was begun is asked for again by itself', async () => {
  const [begun, ...later] = await asked(busy);
  // Beside the test's own asking, once a wait.
  expect(later).toEqual([begun + 2, begun + 4]);
});

test('homework that is not there is not asked for again', async () => {
  const [begun, ...later] = await asked(gone);
  expect(later).toEqual([begun + 1, begun + 2]);
});
