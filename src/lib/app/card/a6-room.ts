import type { CardRow } from '$lib/wire';
import type { CardSection } from './sections';

/** Lines of print that an A6 sheet has beside the card's head and its code, counted on the sheet itself. */
const ROOM_LINES = 38;
/** Letters to a line of it; a heading with the space around it, a ruled row, in lines. */
const LETTERS = 84;
const HEADING_LINES = 1.9;
const ROW_LINES = 1.25;
/** Parts that are set side by side there, so many to a row. */
const ABREAST: Partial<Record<CardRow, number>> = { falls: 4, hand: 3 };

/**
 * Parts for which one A6 sheet has no room, the last of those chosen first: the phone has them by the code.
 * Print smaller than the sheet's is not read in a boat.
 */
export function beyondA6(sections: readonly CardSection[]): CardRow[] {
  let used = 0;
  return sections.flatMap((section) => {
    const lines = linesOf(section);
    if (used + lines > ROOM_LINES) return [section.row];
    used += lines;
    return [];
  });
}

function linesOf({ row, table, lines = [], note = '' }: CardSection): number {
  const abreast = ABREAST[row] ?? 1;
  const head = table && abreast === 1 ? ROW_LINES : 0;
  const rows = table ? Math.ceil(table.rows.length / abreast) * ROW_LINES : 0;
  const set = lines.map(({ sign = '', says }) => wrapped(`${sign} ${says}`) + ROW_LINES - 1);
  const said = abreast > 1 && !table ? ROW_LINES : set.reduce((sum, one) => sum + one, 0);
  return HEADING_LINES + head + rows + said + wrapped(note);
}

const wrapped = (text: string) => Math.ceil(text.length / LETTERS);
