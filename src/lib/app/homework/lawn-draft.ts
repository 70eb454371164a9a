import { LAWN_DRAGS, LAWN_MOST_M } from '$lib/wire';
import { lengthUnit, type Shelf } from '$lib/shell';
import type { Units } from '$lib/scoring';

/** Numbers from a tape as they are typed, one a drag: kept until they are sent, for a lawn has no table. */
const KEY = 'feltfoot-lawn';

/** What was typed before for the homework of this name; empty fields else. */
export function typedBefore(shelf: Pick<Shelf, 'getItem'>, name: string): string[] {
  const fields: string[] = Array(LAWN_DRAGS).fill('');
  try {
    const kept: unknown = JSON.parse(shelf.getItem(KEY) ?? 'null');
    if (!isKept(kept) || kept.name !== name) return fields;
    return fields.map((_, i) => kept.typed[i] ?? '');
  } catch {
    return fields;
  }
}

/** A browser that keeps nothing has the fields as long as the page is open. */
export function keepTyped(shelf: Pick<Shelf, 'setItem'>, name: string, typed: readonly string[]) {
  try {
    shelf.setItem(KEY, JSON.stringify({ name, typed }));
  } catch {
    // Nothing is lost that was not typed in this very page.
  }
}

function isKept(value: unknown): value is { name: string; typed: string[] } {
  if (typeof value !== 'object' || value === null) return false;
  const { name, typed } = value as Record<string, unknown>;
  const isText = (one: unknown) => typeof one === 'string';
  return isText(name) && Array.isArray(typed) && typed.every(isText);
}

/** The drags in metres, or what is wrong with them, naming the drag and what was typed. */
export function readDrags(
  typed: readonly string[],
  units: Units
): { moved_m: number[] } | { fault: string; at: number } {
  const unit = lengthUnit(units, false);
  const most = Math.floor(unit.shown(LAWN_MOST_M));
  for (const [at, text] of typed.entries()) {
    const value = Number(text.trim().replace(',', '.'));
    const drag = `Drag ${at + 1}`;
    if (text.trim() === '') return { fault: `${drag} is still open.`, at };
    if (!Number.isFinite(value)) return { fault: `${drag}: “${text}” is not a number.`, at };
    if (value < 0 || value > most)
      return { fault: `${drag}: ${text} is not from 0 to ${most} ${unit.name}.`, at };
  }
  return { moved_m: typed.map((text) => unit.read(text)) };
}
