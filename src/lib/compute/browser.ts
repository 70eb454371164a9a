import { Asker } from './asker';
import { inPagePort } from './in-page';
import type { AtHand } from './jobs';
import type { HostPort } from './messages';

/** A page is drawn sixty times a second, and a slice leaves it most of that. */
const PAGE_SLICE_MS = 8;

/** A worker that failed to start, or broke off in the middle, has ended as far as a page is concerned. */
export function workerPort(worker: Worker): HostPort {
  return {
    // What is asked may be a page's live state, which no worker takes.
    post: (asked) => worker.postMessage(JSON.parse(JSON.stringify(asked))),
    onmessage: (hear) => worker.addEventListener('message', ({ data }) => hear(data)),
    onend: (ended) =>
      worker.addEventListener('error', () => {
        worker.terminate();
        ended();
      }),
    close: () => worker.terminate()
  };
}

const openWorker = () =>
  workerPort(new Worker(new URL('./compute.worker.ts', import.meta.url), { type: 'module' }));

const atHand: AtHand = {};

/**
 * Work that this page must be able to do even without a network, before the app is kept for offline
 * use: what its worker would have to fetch, the page then does itself.
 */
export function keepAtHand(work: AtHand): void {
  Object.assign(atHand, work);
}

const openInPage = () =>
  inPagePort(
    {
      slice_ms: PAGE_SLICE_MS,
      isPage: true,
      breathe: () => new Promise((next) => setTimeout(next))
    },
    atHand
  );

/** Everything that a page has worked out: in a worker, or in slices where there is none. */
export const compute = new Asker([openWorker, openInPage], 1);
