/** Read by static/before-paint.js too, before the first paint. */
const key = 'feltfoot-left';
/** What a page held is there again by then, from far away too, ms. */
const FILLED_MS = 5000;

/** Called as the page goes: how high its content is, px, should it be loaded again. */
export function keepHeight(content: HTMLElement, storage: Storage): void {
  storage.setItem(key, JSON.stringify({ href: location.href, height_px: content.offsetHeight }));
}

/** Called as a page opens: it stays as high as it was left until what it held is there again. */
export function letHeightGoLater(page: HTMLElement): void {
  setTimeout(() => letHeightGo(page), FILLED_MS);
}

/** Another page, or one that is filled, is as high as it is. */
export function letHeightGo(page: HTMLElement): void {
  page.style.removeProperty('--left-height');
}
