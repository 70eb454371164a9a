import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { NewVersion } from '../../src/lib/shell/new-version';

/** A browser's side of service workers, as far as a page sees it. */
function browser({ isWaiting }: { isWaiting: boolean }) {
  const told: string[] = [];
  const worker = Object.assign(new EventTarget(), {
    state: 'installing',
    postMessage: (text: string) => told.push(text)
  });
  const registration = Object.assign(new EventTarget(), {
    waiting: isWaiting ? worker : null,
    installing: isWaiting ? null : worker
  });
  const container = Object.assign(new EventTarget(), { ready: Promise.resolve(registration) });
  const went: string[] = [];
  const assign = (address: string) => went.push(address);
  vi.stubGlobal('navigator', { serviceWorker: container });
  vi.stubGlobal('location', { href: 'https://lake.example/lessons', assign });
  return {
    told,
    went,
    /** The new version has all its files. */
    installed() {
      registration.dispatchEvent(new Event('updatefound'));
      registration.waiting = worker;
      worker.state = 'installed';
      worker.dispatchEvent(new Event('statechange'));
    },
    takesOver: () => container.dispatchEvent(new Event('controllerchange'))
  };
}

let version: NewVersion;
beforeEach(() => {
  version = new NewVersion();
});
afterEach(() => vi.unstubAllGlobals());

test('a version that waits when a page opens takes over at once, and the page opens afresh', async () => {
  const { told, went, takesOver } = browser({ isWaiting: true });
  await version.watch();
  expect([told, went]).toEqual([['take over'], []]);
  takesOver();
  expect(went).toEqual(['https://lake.example/lessons']);
});

test('one that comes under an open page waits for the way to another: a try under way is not lost', async () => {
  const { told, went, installed, takesOver } = browser({ isWaiting: false });
  await version.watch();
  installed();
  expect([told, went]).toEqual([[], []]);
  expect(version.takeOver('https://lake.example/water')).toBe(true);
  expect(told).toEqual(['take over']);
  takesOver();
  expect(went).toEqual(['https://lake.example/water']);
  // Once: the next way is an ordinary one.
  expect(version.takeOver('https://lake.example/')).toBe(false);
});

test('without a new version every way is an ordinary one', async () => {
  browser({ isWaiting: false });
  await version.watch();
  expect(version.takeOver('https://lake.example/water')).toBe(false);
});
