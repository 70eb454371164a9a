/** Whether a button moves the rod while it is held, or from one press until the next. */
export const PRESS_KEY = 'feltfoot-press';

/** What was kept on this device. */
export const isLatchKept = (shelf: Pick<Storage, 'getItem'>): boolean =>
  shelf.getItem(PRESS_KEY) === 'latch';

/** A browser without room forgets it, which does no harm. */
export function keepLatch(shelf: Pick<Storage, 'setItem'>, isLatched: boolean): void {
  try {
    shelf.setItem(PRESS_KEY, isLatched ? 'latch' : 'hold');
  } catch {
    return;
  }
}
