import type { Shelf } from '$lib/shell';
import * as v from 'valibot';
import { LOOK_MOVES } from './looks';

/**
 * What of a spell is under way and no entry yet: a drop whose clock runs, since when (ms, clock of the
 * day, so that it goes on while the page is away), and a look that is half typed.
 */
const unfinished = v.object({
  drop_ms: v.fallback(v.nullable(v.number()), null),
  look: v.fallback(
    v.object({
      move: v.picklist(LOOK_MOVES.map((_, i) => i)),
      out: v.string(),
      travel: v.string(),
      height: v.string()
    }),
    { move: 0, out: '', travel: '', height: '' }
  )
});
export type Unfinished = v.InferOutput<typeof unfinished>;

const KEY = 'feltfoot-unfinished-spell';

/** Nothing where nothing was begun, or what was kept cannot be read. */
export function unfinishedOn(shelf: Pick<Shelf, 'getItem'>): Unfinished {
  try {
    return v.parse(unfinished, JSON.parse(shelf.getItem(KEY) ?? '{}'));
  } catch {
    return v.parse(unfinished, {});
  }
}

/** A shelf that is full or forbidden keeps nothing; the page goes on without it. */
export function keepUnfinished(shelf: Shelf, part: Partial<Unfinished>): void {
  try {
    shelf.setItem(KEY, JSON.stringify({ ...unfinishedOn(shelf), ...part }));
  } catch {
    // Only a reload would miss it.
  }
}
