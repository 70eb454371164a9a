/** Read by static/before-paint.js too, before the first paint. */
const key = 'feltfoot-begun';

/** Whether the front page opens with the day of somebody who has begun, told to the next time it opens. */
export function keepBegun(hasBegun: boolean, storage: Storage, page: HTMLElement): void {
  delete page.dataset.begun;
  try {
    if (hasBegun) storage.setItem(key, '1');
    else storage.removeItem(key);
  } catch {
    // Then the first try is seen for the blink until the record is read.
  }
}
