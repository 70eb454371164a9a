// The app's own compute worker. Vitest wraps every import() for its page, which a worker is not: here
// the wrapping does nothing. What is asked before the worker listens is kept for it.
const early: unknown[] = [];
const keep = ({ data }: MessageEvent) => early.push(data);
self.addEventListener('message', keep);
Object.assign(self, {
  __vitest_browser_runner__: { wrapDynamicImport: (load: () => Promise<unknown>) => load() }
});
void import('../../src/lib/compute/compute.worker').then(() => {
  self.removeEventListener('message', keep);
  for (const data of early) self.dispatchEvent(new MessageEvent('message', { data }));
});

export {};
