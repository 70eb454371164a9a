import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Feed } from '../../src/lib/server/feed';
import { Throttle } from '../../src/lib/server/throttle';
import type { Store } from '../../src/lib/server/store';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

describe('a pace', () => {
  const paced = { gather_ms: 25, every_ms: 200 };

  /** Work that takes so long, with when it began and ended. */
  function slow(took_ms: number) {
    const runs: { from: number; to: number }[] = [];
    const from = performance.now();
    const now = () => performance.now() - from;
    const work = async () => {
      const run = { from: now(), to: Infinity };
      runs.push(run);
      await pause(took_ms);
      run.to = now();
    };
    return { runs, now, pace: new Throttle(work, paced) };
  }

  test('is quick after a quiet time, once for all who come together', async () => {
    const { runs, pace } = slow(10);
    for (let i = 0; i < 24; i++) {
      pace.want();
      await pass(1);
    }
    expect(runs).toEqual([]);
    await pass(1000);
    expect(runs).toEqual([{ from: 25, to: 35 }]);
    pace.want();
    await pass(25);
    expect(runs).toHaveLength(2);
  });

  test('rests between two runs, and none is missing after the last want', async () => {
    const { runs, now, pace } = slow(40);
    for (let i = 0; i < 170; i++) {
      pace.want();
      await pass(7);
    }
    const last = now() - 7;
    await pass(1000);
    expect(runs.length).toBe(6);
    for (const [i, { from }] of runs.slice(1).entries()) expect(from - runs[i].to).toBe(200);
    expect(runs.at(-1)?.from).toBeGreaterThanOrEqual(last);
  });

  test('what is wanted while it runs is done by another run', async () => {
    const { runs, pace } = slow(300);
    pace.want();
    await pass(30);
    pace.want();
    await pass(1000);
    expect(runs).toEqual([
      { from: 25, to: 325 },
      { from: 525, to: 825 }
    ]);
  });

  test('goes on after a run that failed, and not after it was stopped', async () => {
    const work = vi.fn(() => Promise.reject(new Error('no store')));
    const pace = new Throttle(work, paced);
    pace.want();
    await pass(300);
    pace.want();
    await pass(300);
    expect(work).toHaveBeenCalledTimes(2);
    pace.want();
    pace.stop();
    pace.want();
    await pass(300);
    expect(work).toHaveBeenCalledTimes(2);
  });
});

describe('a feed', () => {
  /** A listener, with what it was shown and when, ms from now. */
  function listen(feed: Feed, room: string, view: () => Promise<unknown>) {
    const heard: { at: number; text: string }[] = [];
    const from = performance.now();
    const reader = feed.stream(room, { key: 'screen', view, from: 'here' }).getReader();
    void (async () => {
      for (let one = await reader.read(); !one.done; one = await reader.read()) {
        const text = new TextDecoder().decode(one.value);
        if (text.startsWith('data: ')) heard.push({ at: performance.now() - from, text });
      }
    })();
    return { heard };
  }

  test('shows a lone change at once, a busy room every 200 ms, and the last of it all', async () => {
    const feed = await Feed.open({ pool: null } as Store);
    let votes = 0;
    let views = 0;
    const view = async () => {
      views++;
      const seen = votes;
      await pause(10);
      return seen;
    };
    const [one, other] = [listen(feed, 'a room', view), listen(feed, 'a room', view)];
    await pass(1000);
    for (votes = 1; votes < 100; votes++) {
      feed.changed('a room');
      await pass(13);
    }
    feed.changed('a room');
    await pass(1000);
    feed.changed('another room');
    await pass(1000);
    // 25 ms to gather, 10 ms for the view.
    expect(one.heard.slice(0, 2).map(({ at }) => at)).toEqual([10, 1035]);
    for (const [i, { at }] of one.heard.slice(2).entries()) {
      expect(at - one.heard[i + 1].at).toBeGreaterThanOrEqual(200);
    }
    expect(one.heard.at(-1)?.text).toBe('data: 100\n\n');
    expect(other.heard).toEqual(one.heard);
    expect(views).toBe(one.heard.length);
    await feed.close();
    expect(feed.listeners).toBe(0);
  });
});
