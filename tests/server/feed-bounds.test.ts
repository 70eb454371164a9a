import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { FeedRequest } from '../../src/lib/server/audience';
import { Feed } from '../../src/lib/server/feed';
import type { Store } from '../../src/lib/server/store';

const ROOM = 'a room';
/** What one address may have. */
const FULL = 6000;
const refused = (fault: unknown) =>
  expect(fault).toMatchObject({
    status: 503,
    retryAfter_s: 15,
    message: expect.stringMatching(/^Too many people/)
  });

let feed: Feed;
beforeEach(async () => {
  vi.useFakeTimers();
  feed = await Feed.open({ pool: null } as Store);
});
afterEach(async () => {
  await feed.close();
  vi.useRealTimers();
});

function open(more: Partial<FeedRequest> = {}, room = ROOM) {
  const view = async () => 1;
  return feed.stream(room, { key: 'phone', view, from: 'hall', ...more });
}

/** @returns what it was refused with, or null */
function tried(more: Partial<FeedRequest> = {}, room = ROOM) {
  try {
    open(more, room);
    return null;
  } catch (fault) {
    return fault;
  }
}

/** Reads to the end, if there is one. */
async function isOver(stream: ReadableStream<Uint8Array>): Promise<boolean> {
  const reader = stream.getReader();
  for (;;) {
    const quiet = vi.advanceTimersByTimeAsync(1).then(() => null);
    const one = await Promise.race([reader.read(), quiet]);
    if (!one) return false;
    if (one.done) return true;
  }
}

test('of a seat the newest two feeds go on, whatever other seats have', async () => {
  const [other, first, second, third] = ['other', 'own', 'own', 'own'].map((seat) =>
    open({ seat })
  );
  expect(feed.listeners).toBe(3);
  expect(await Promise.all([other, first, second, third].map(isOver))).toEqual([
    false,
    true,
    false,
    false
  ]);
});

test('of a room fifty phones without a seat are heard and fifty screens; seats have their own', () => {
  for (const key of ['phone', 'screen']) {
    for (let i = 0; i < 50; i++) open({ key });
    refused(tried({ key }));
  }
  expect(tried({ seat: 'own' })).toBeNull();
  expect(tried({}, 'another room')).toBeNull();
  expect(feed.listeners).toBe(102);
});

describe('an address that has all that it may have', () => {
  /** How a feed ends; each begins one and says how it goes on. */
  const ways: Record<string, () => () => Promise<unknown>> = {
    'its phone leaves': () => {
      const stream = open();
      return () => stream.cancel();
    },
    'its phone leaves before it was shown anything': () => {
      const stream = open({ view: () => new Promise(() => {}) });
      return () => stream.cancel();
    },
    'what it shows cannot be made, and its phone leaves': () => {
      const stream = open({ view: () => Promise.reject(new Error('no store')) });
      return () => stream.cancel();
    },
    'its phone reads no more': () => {
      let told = 0;
      open({ view: async () => told++ }, 'a talking room');
      return async () => {
        for (let i = 0; i < 70; i++) {
          feed.changed('a talking room');
          await vi.advanceTimersByTimeAsync(210);
        }
        await vi.advanceTimersByTimeAsync(15_000);
      };
    },
    'its key is void': () => {
      open({ key: 'screen', keyed: { space: 'Reed', holds: async () => false } });
      return async () => {
        feed.doubt('Reed');
        await vi.advanceTimersByTimeAsync(1);
      };
    },
    'its seat has newer ones': () => {
      open({ seat: 'own' });
      return async () => {
        for (let i = 0; i < 2; i++) open({ seat: 'own', from: 'elsewhere' });
      };
    }
  };

  test('gets no other, and one for each that ends', async () => {
    for (let i = 1; i < FULL; i++) open({ seat: `seat ${i}` }, `room ${i % 6}`);
    for (const [way, begin] of Object.entries(ways)) {
      const ended = begin();
      refused(tried({ seat: 'late' }));
      expect(tried({ seat: 'late', from: 'elsewhere' }), way).toBeNull();
      await ended();
      const next = open({ seat: 'next' });
      refused(tried({ seat: 'late' }));
      await next.cancel();
    }
  });

  test('none is left of a server that stops, nor comes after it', async () => {
    open();
    const last = open();
    await feed.close();
    expect(await isOver(last)).toBe(true);
    expect(feed.listeners).toBe(0);
    expect(await isOver(open())).toBe(true);
    expect(feed.listeners).toBe(0);
  });
});
