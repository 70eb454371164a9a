import { expect, test, vi } from 'vitest';
import { keepFresh } from '../../../src/lib/app/guide/fresh';

/** A page that can be hidden and seen again. */
class FakePage extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
  become(state: DocumentVisibilityState) {
    this.visibilityState = state;
    this.dispatchEvent(new Event('visibilitychange'));
  }
}

test('a page asks again when it is seen again and every half minute, never while hidden', () => {
  vi.useFakeTimers();
  const page = new FakePage();
  const again = vi.fn();
  const stop = keepFresh(page as unknown as Document, again);
  vi.advanceTimersByTime(61_000);
  expect(again).toHaveBeenCalledTimes(2);
  page.become('hidden');
  vi.advanceTimersByTime(600_000);
  expect(again).toHaveBeenCalledTimes(2);
  page.become('visible');
  expect(again).toHaveBeenCalledTimes(3);
  stop();
  page.become('visible');
  vi.advanceTimersByTime(600_000);
  expect(again).toHaveBeenCalledTimes(3);
  vi.useRealTimers();
});
