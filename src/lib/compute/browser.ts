import { Asker } from './asker';
import { JOBS, type JobName } from './jobs';
import type { HostPort, JobRequest } from './messages';

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

/** A page that is open so long has fetched what it is drawn with, even where nothing says so, ms. */
const AT_REST_MS = 3000;
const LOOK_AGAIN_MS = 100;

/** Before a page hears what is done on it, it fetches nothing but what it is drawn with. */
const isAtRest = () =>
  performance.now() > AT_REST_MS || document.querySelector('main[data-awake]') !== null;

/** Code that this page may need later, even without a network: fetched when the page is at rest. */
export function fetchAtRest(...codes: (() => Promise<unknown>)[]): void {
  if (typeof document === 'undefined') return;
  if (!isAtRest()) {
    setTimeout(() => fetchAtRest(...codes), LOOK_AGAIN_MS);
    return;
  }
  // Without a network it is fetched when it is asked for, and told then.
  for (const fetched of codes) fetched().catch(() => {});
}

/**
 * Work that this page must be able to do even without a network, before the app is kept for offline
 * use: what a worker could not fetch the page does.
 */
export function keepAtHand(...jobs: JobName[]): void {
  fetchAtRest(inPage, ...jobs.map((name) => () => JOBS[name].load()));
}

const inPage = () => import('./in-page');

/** The work done in the page itself: few pages ever need the code for it. */
function openInPage(): HostPort {
  const coming = inPage().then(({ inPagePort }) =>
    inPagePort({
      slice_ms: PAGE_SLICE_MS,
      isPage: true,
      breathe: () => new Promise((next) => setTimeout(next))
    })
  );
  const then = (use: (port: HostPort) => void) => void coming.then(use, () => {});
  return {
    post: (asked: JobRequest) => then((port) => port.post(asked)),
    onmessage: (hear) => then((port) => port.onmessage(hear)),
    onend: (ended) => {
      then((port) => port.onend(ended));
      coming.catch(ended);
    },
    close: () => then((port) => port.close())
  };
}

/** Everything that a page has worked out: in a worker, or in slices where there is none. */
export const compute = new Asker([openWorker, openInPage], 1);
