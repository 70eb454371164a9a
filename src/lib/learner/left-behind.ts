import type { RecordChange } from '$lib/practice';

/**
 * Changes that were not on the disk yet when a page went: a tap and a reload may be closer together than
 * a write takes. The page that comes next does them. Only this is written at once, and so can be while a
 * page goes.
 */
const between = (record: string) => `${record}-left-behind-`;

/** One page's place for them. */
export function placeFor(record: string, page: string): string {
  return between(record) + page;
}

/** Keeps the changes, or lets go of what was kept where there are none. */
export function leaveBehind(place: string, changes: readonly RecordChange[]): void {
  try {
    if (changes.length > 0) localStorage.setItem(place, JSON.stringify(changes));
    else localStorage.removeItem(place);
  } catch {
    // No room, or none for us: they are lost only if the page goes before they are written.
  }
}

/** What pages left behind, as it was found, and gone from there. */
export function takeLeftBehind(record: string): unknown[] {
  try {
    const places = Object.keys(localStorage).filter((key) => key.startsWith(between(record)));
    return places.flatMap((place) => {
      const kept = localStorage.getItem(place) ?? '[]';
      localStorage.removeItem(place);
      return parsed(kept);
    });
  } catch {
    return [];
  }
}

function parsed(text: string): unknown[] {
  try {
    const list: unknown = JSON.parse(text);
    return Array.isArray(list) ? list : [];
  } catch {
    return [];
  }
}
