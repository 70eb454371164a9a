import type { Shelf } from '$lib/shell';
import * as v from 'valibot';
import { MOST_IN_BOAT } from './asked';

const KEY = 'feltfoot-boat-names';
const names = v.fallback(v.pipe(v.array(v.string()), v.maxLength(MOST_IN_BOAT)), []);

/** Names that were typed for who is in the boat, by place. They stay in this browser. */
export function boatNames(shelf: Shelf): string[] {
  try {
    return v.parse(names, JSON.parse(shelf.getItem(KEY) ?? '[]'));
  } catch {
    return [];
  }
}

export function keepBoatNames(shelf: Shelf, typed: readonly string[]): void {
  try {
    shelf.setItem(KEY, JSON.stringify(typed));
  } catch {
    // Full, or forbidden by the browser: they last as long as the page is open.
  }
}

/** What each is called on the sheet: by homework, else as it was typed, else by place. */
export function calledInBoat(
  known: readonly (string | null)[],
  typed: readonly string[]
): string[] {
  return known.map((name, i) => {
    if (name) return name;
    return typed[i]?.trim() || (known.length > 1 ? `Client ${i + 1}` : 'Someone new');
  });
}

/** "Ina, Bo and Wim" */
export function listedNames(all: readonly string[]): string {
  return all.length > 1 ? `${all.slice(0, -1).join(', ')} and ${all.at(-1)}` : all[0];
}
