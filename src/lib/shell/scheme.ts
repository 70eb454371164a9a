import type { Settings } from '$lib/wire';

/** Read by static/before-paint.js too, before the first paint. */
const key = 'feltfoot-scheme';

/**
 * Shows the page in this scheme; 'auto' leaves it to the device. The choice itself is kept in the
 * learner's record; the copy in `storage` is only there so that the next page opens in it at once.
 */
export function showScheme(scheme: Settings['scheme'], storage: Storage, page: HTMLElement): void {
  if (scheme === 'auto') {
    delete page.dataset.scheme;
    storage.removeItem(key);
  } else {
    page.dataset.scheme = scheme;
    storage.setItem(key, scheme);
  }
}
