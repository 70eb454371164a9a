import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Feed } from '../../src/lib/server/feed';
import type { Store } from '../../src/lib/server/store';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

test('a phone that left its room is away ten seconds later, is told of, and is back at once', async () => {
  const feed = await Feed.open({ pool: null } as Store);
  const phone = (seat: string) =>
    feed.stream('a room', { key: 'phone', view: async () => 'a view', from: 'here', seat });
  const shown: string[][] = [];
  const view = async () => void shown.push(feed.away('a room'));
  feed.stream('a room', { key: 'screen', view, from: 'there' });
  const [, other] = [phone('one'), phone('other')];
  await pass(1000);
  expect(feed.away('a room')).toEqual([]);

  await other.cancel();
  await pass(9000);
  // A reload takes no longer.
  expect(feed.away('a room')).toEqual([]);
  await pass(2000);
  expect(feed.away('a room')).toEqual(['other']);
  expect(shown.at(-1)).toEqual(['other']);
  expect(feed.away('another room')).toEqual([]);

  phone('other');
  await pass(1000);
  expect(shown.at(-1)).toEqual([]);
  await feed.close();
});

test('of two pages of one phone the last to go makes it away', async () => {
  const feed = await Feed.open({ pool: null } as Store);
  const page = () =>
    feed.stream('a room', { key: 'phone', view: async () => '', from: 'here', seat: 'one' });
  const [first, second] = [page(), page()];
  await first.cancel();
  await pass(20_000);
  expect(feed.away('a room')).toEqual([]);
  await second.cancel();
  await pass(20_000);
  expect(feed.away('a room')).toEqual(['one']);
  await feed.close();
});
