export const schemes = ['auto', 'light', 'dark'] as const;
export type Scheme = (typeof schemes)[number];

/** Read by static/scheme.js too, before the first paint. */
const key = 'feltfoot-scheme';

export function chosenScheme(storage: Storage): Scheme {
  const stored = storage.getItem(key);
  return schemes.find((scheme) => scheme === stored) ?? 'auto';
}

/** Shows the page in this scheme and remembers it; 'auto' leaves it to the device. */
export function chooseScheme(scheme: Scheme, storage: Storage, page: HTMLElement): void {
  if (scheme === 'auto') {
    delete page.dataset.scheme;
    storage.removeItem(key);
  } else {
    page.dataset.scheme = scheme;
    storage.setItem(key, scheme);
  }
}
