import type { Page, Request } from '@playwright/test';

/** Tells later whether all that the page asks for once it is awake has come, which nothing on it says. */
export async function watchAtRest(page: Page): Promise<() => Promise<boolean>> {
  const open = new Set<Request>();
  page.on('request', (request) => open.add(request));
  page.on('requestfinished', (request) => open.delete(request));
  page.on('requestfailed', (request) => open.delete(request));
  await page.addInitScript(() => {
    const seen = new MutationObserver(() => {
      if (!document.querySelector('main[data-awake]')) return;
      seen.disconnect();
      performance.mark('awake');
    });
    seen.observe(document, { subtree: true, childList: true, attributes: true });
  });
  const hasAsked = () =>
    page.evaluate(() => {
      const [awake] = performance.getEntriesByName('awake');
      const since = (entry: PerformanceEntry) => awake && entry.startTime >= awake.startTime;
      const scripts = performance.getEntriesByType('resource').filter(since);
      return scripts.some(({ name }) => name.endsWith('.js'));
    });
  return async () => (await hasAsked()) && open.size === 0;
}
