import { FOOT_M, INCH_M, OUNCE_KG, POUND_FORCE_N } from '$lib/model';
import { formatWeight } from '$lib/scoring';
import type { Block, Span } from './markdown';

/** What a unit of our documents is where feet are read: its name and how many of them it is. */
const UNITS: Record<string, readonly [name: string, times: number]> = {
  m: ['ft', 1 / FOOT_M],
  cm: ['in', 0.01 / INCH_M],
  mm: ['in', 1e-3 / INCH_M],
  g: ['oz', 1e-3 / OUNCE_KG],
  N: ['oz', 16 / POUND_FORCE_N],
  mN: ['oz', 0.016 / POUND_FORCE_N]
};
const NUMBERS = /\d+(?:\.\d+)?/g;
const MEASURED =
  /(\d+(?:\.\d+)?)((?: ?(?:[-–…±]|to|and|or) ?\d+(?:\.\d+)?)*) (mm|cm|m|g|mN|N)\b(?![/²³·])/g;

/** Two digits are as much as these figures hold; a hundredth of an inch is the least that is told. */
function told(value: number): string {
  return value >= 10 ? `${Math.round(value)}` : `${Number(value.toPrecision(2))}`;
}

const scaled = (text: string, times: number) =>
  text.replace(NUMBERS, (one) => told(times * Number(one)));

export const textInFeet = (text: string): string =>
  text.replace(MEASURED, (_, first: string, rest: string, unit: string) => {
    // A jig has a size.
    if (unit === 'g' && rest === '') return formatWeight(1e-3 * Number(first), 'imperial');
    const [name, times] = UNITS[unit];
    return `${scaled(first + rest, times)} ${name}`;
  });

/** A document as it is read in feet: its sentences, and the columns and rows of its tables by their heads. */
export function inFeet(blocks: readonly Block[]): Block[] {
  return blocks.map((block) => {
    if (block.kind === 'list') return { ...block, items: block.items.map(spansInFeet) };
    if (block.kind !== 'table') return { ...block, text: spansInFeet(block.text) };
    const columns = block.head.map(unitOf);
    const rows = block.rows.map((row) => {
      const own = unitOf(row[0]);
      return row.map((cell, i) => {
        const unit = i === 0 ? undefined : (columns[i] ?? own);
        return i === 0 ? headInFeet(cell) : cellInFeet(cell, unit);
      });
    });
    return { ...block, head: block.head.map(headInFeet), rows };
  });
}

const HEAD_UNIT = /, (mm|cm|m|g|mN|N)$/;

const spansInFeet = (spans: readonly Span[]): Span[] =>
  spans.map((span) => (span.kind === 'code' ? span : { ...span, text: textInFeet(span.text) }));

const unitOf = (cell: readonly Span[]) =>
  HEAD_UNIT.exec(cell.map(({ text }) => text).join(''))?.[1];

const headInFeet = (cell: readonly Span[]): Span[] =>
  spansInFeet(cell).map((span) => {
    const text = span.text.replace(HEAD_UNIT, (_, unit: string) => `, ${UNITS[unit][0]}`);
    return { ...span, text };
  });

function cellInFeet(cell: readonly Span[], unit: string | undefined): Span[] {
  if (!unit) return spansInFeet(cell);
  return cell.map((span) => ({ ...span, text: scaled(span.text, UNITS[unit][1]) }));
}
