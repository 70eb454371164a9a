import { type Assignment, storedAssignment } from '$lib/wire';
import type { Shelf } from '$lib/shell';
import * as v from 'valibot';

/** Homework that its guide wants to start from again; it stays in this browser. */
const favorite = v.object({ id: v.string(), task: storedAssignment });
export interface Favorite {
  id: string;
  task: Assignment;
}

const KEY = 'feltfoot-favorite-homework';
/** More than these nobody finds their way in, and a browser's shelf holds some megabytes. */
const MOST_FAVORITES = 20;

/** Newest first; one that can no longer be read is left out. */
export function favoritesOn(shelf: Pick<Shelf, 'getItem'>): Favorite[] {
  try {
    const kept = v.parse(v.array(v.unknown()), JSON.parse(shelf.getItem(KEY) ?? '[]'));
    return kept.flatMap((one) => {
      const read = v.safeParse(favorite, one);
      return read.success ? [read.output] : [];
    });
  } catch {
    return [];
  }
}

/** Keeps it, without a last day; one of the same title makes way. Throws where the shelf is full or forbidden. */
export function keepFavorite(shelf: Shelf, id: string, task: Assignment): void {
  const others = favoritesOn(shelf).filter((one) => one.task.title !== task.title);
  write(shelf, [{ id, task: { ...task, due: null } }, ...others].slice(0, MOST_FAVORITES));
}

export function dropFavorite(shelf: Shelf, id: string): void {
  write(
    shelf,
    favoritesOn(shelf).filter((one) => one.id !== id)
  );
}

function write(shelf: Shelf, all: readonly Favorite[]): void {
  shelf.setItem(KEY, JSON.stringify(all));
}
