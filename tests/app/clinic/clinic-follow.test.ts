import * as v from 'valibot';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { followFeed } from '../../../src/lib/app/clinic/follow';

/** A connection that the test breaks as it likes. */
class FakeSource {
  static CLOSED = 2;
  static all: FakeSource[] = [];
  readyState = 0;
  onopen = () => {};
  onerror = () => {};
  onmessage: (event: { data: string }) => void = () => {};
  constructor() {
    FakeSource.all.push(this);
  }
  addEventListener() {}
  close() {
    this.readyState = FakeSource.CLOSED;
  }
  breaks(readyState: number) {
    this.readyState = readyState;
    this.onerror();
  }
}

const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
const views: object[] = [];
const connected: boolean[] = [];
const open = () => FakeSource.all.filter(({ readyState }) => readyState !== FakeSource.CLOSED);
let stop: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  const online = new EventTarget();
  vi.stubGlobal('EventSource', FakeSource);
  vi.stubGlobal('document', page);
  vi.stubGlobal('addEventListener', online.addEventListener.bind(online));
  vi.stubGlobal('removeEventListener', online.removeEventListener.bind(online));
  for (const list of [FakeSource.all, views, connected]) list.length = 0;
  stop = followFeed<object>(
    '/feed',
    v.looseObject({}),
    (view) => views.push(view),
    (is) => connected.push(is)
  );
});
afterEach(() => {
  stop();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a feed that was refused is asked for again, one that connects by itself is left to it', () => {
  FakeSource.all[0].breaks(0);
  vi.advanceTimersByTime(60_000);
  expect(FakeSource.all).toHaveLength(1);
  FakeSource.all[0].breaks(FakeSource.CLOSED);
  vi.advanceTimersByTime(3000);
  expect(FakeSource.all).toHaveLength(2);
  expect(connected).toEqual([false, false]);
});

test('one that is refused again and again is asked for less and less often, until one is open', () => {
  const asked = (ms: number) => {
    const before = FakeSource.all.length;
    for (let passed = 0; passed < ms; passed += 100) {
      vi.advanceTimersByTime(100);
      const last = FakeSource.all[FakeSource.all.length - 1];
      if (last.readyState !== FakeSource.CLOSED) last.breaks(FakeSource.CLOSED);
    }
    return FakeSource.all.length - before;
  };
  FakeSource.all[0].breaks(FakeSource.CLOSED);
  // After 3, 6, 12, 24 and then every 48 s at most, and half of that at least.
  expect(asked(45_000)).toBeGreaterThanOrEqual(4);
  const later = asked(480_000);
  expect(later).toBeGreaterThanOrEqual(9);
  expect(later).toBeLessThanOrEqual(20);
  page.dispatchEvent(new Event('visibilitychange'));
  open()[0].onopen();
  open()[0].breaks(FakeSource.CLOSED);
  vi.advanceTimersByTime(3000);
  expect(open()).toHaveLength(1);
});

test('a phone that wakes has a new connection and one only', () => {
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  expect(FakeSource.all).toHaveLength(1);
  page.visibilityState = 'visible';
  page.dispatchEvent(new Event('visibilitychange'));
  expect(FakeSource.all).toHaveLength(2);
  expect(open()).toHaveLength(1);
  open()[0].onmessage({ data: '{"at":3}' });
  expect(views).toEqual([{ at: 3 }]);
});

test('who has left is not connected again', () => {
  FakeSource.all[0].breaks(FakeSource.CLOSED);
  stop();
  page.dispatchEvent(new Event('visibilitychange'));
  vi.advanceTimersByTime(60_000);
  expect(open()).toHaveLength(0);
});
