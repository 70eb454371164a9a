import { afterEach, expect, test, vi } from 'vitest';
import { watchPlace } from '../../../src/lib/app/lesson/place';
import { whenInSight } from '../../../src/lib/sandbox/when-in-sight';

/** What a window would say, when the test says so. */
class Windows {
  static say: (entries: { target: { id: string }; isIntersecting: boolean }[]) => void;
  constructor(hear: typeof Windows.say) {
    Windows.say = hear;
  }
  observe(): void {}
  disconnect(): void {}
}

afterEach(() => vi.unstubAllGlobals());

const STATIONS = ['about', 'predict', 'see'].map((id) => ({ id }) as Element);

const entry = (id: string, isIntersecting: boolean) => ({ target: { id }, isIntersecting });

test('a page that was busy while its window went from step to step is at the last of them', () => {
  vi.stubGlobal('IntersectionObserver', Windows);
  const told: string[] = [];
  watchPlace(STATIONS, (id) => told.push(id));
  Windows.say([entry('about', true)]);
  Windows.say([
    entry('about', false),
    entry('predict', true),
    entry('predict', false),
    entry('see', true)
  ]);
  expect(told).toEqual(['about', 'see']);
});

test('a page that settles back over the edge of two steps, and on again, is at the second', () => {
  vi.stubGlobal('IntersectionObserver', Windows);
  const told: string[] = [];
  watchPlace(STATIONS, (id) => told.push(id));
  Windows.say([entry('predict', true)]);
  Windows.say([entry('predict', false), entry('see', true)]);
  // What lies above got its height: the step above is at the line again, and this one is still.
  Windows.say([entry('predict', true)]);
  Windows.say([entry('predict', false)]);
  expect(told.at(-1)).toBe('see');
});

test('a film that came into sight and was heard of late with its going out before plays', () => {
  vi.stubGlobal('IntersectionObserver', Windows);
  const seen = vi.fn<() => void>();
  // Only a browser's own observer looks at the place.
  whenInSight({} as Element, seen);
  Windows.say([entry('film', false)]);
  expect(seen).not.toHaveBeenCalled();
  Windows.say([entry('film', false), entry('film', true)]);
  expect(seen).toHaveBeenCalledOnce();
});
