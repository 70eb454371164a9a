/** So often while the page is looked at, ms. */
const EVERY_MS = 30_000;

type Page = Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;

/** Asks again when somebody comes back to the page, and now and then while it is seen. @returns how to stop */
export function keepFresh(page: Page, again: () => void): () => void {
  const look = () => {
    if (page.visibilityState === 'visible') again();
  };
  page.addEventListener('visibilitychange', look);
  const timer = setInterval(look, EVERY_MS);
  return () => {
    page.removeEventListener('visibilitychange', look);
    clearInterval(timer);
  };
}
