import * as v from 'valibot';

/** A key that was told once and has not been saved by its guide yet. */
const guideKey = v.object({ name: v.string(), secret: v.string() });
export type GuideKey = Readonly<v.InferOutput<typeof guideKey>>;

type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

const KEY = 'feltfoot-unsaved-keys';
/** Spaces that one browser opens and leaves without their keys: more are somebody trying it out. */
const MOST_KEYS = 5;

/** The keys of this browser that were never saved, newest first. */
export function unsavedKeys(shelf: Shelf): GuideKey[] {
  try {
    return v.parse(v.array(guideKey), JSON.parse(shelf.getItem(KEY) ?? '[]'));
  } catch {
    return [];
  }
}

/** Keeps it until it is saved: a page that is reloaded must be able to show it again. */
export function keepUnsaved(shelf: Shelf, key: GuideKey): void {
  write(shelf, [key, ...unsavedKeys(shelf)].slice(0, MOST_KEYS));
}

/** It is saved, or opens nothing any more. */
export function dropUnsaved(shelf: Shelf, { secret }: GuideKey): void {
  write(
    shelf,
    unsavedKeys(shelf).filter((one) => one.secret !== secret)
  );
}

function write(shelf: Shelf, keys: readonly GuideKey[]): void {
  try {
    shelf.setItem(KEY, JSON.stringify(keys));
  } catch {
    // Full, or forbidden by the browser: the key is shown as long as the page is open.
  }
}
