import { SKIP_M, type Move, type Result, type Setup } from '$lib/model';
import { formatLength, formatShare, formatTime, tipTravel, type Units } from '$lib/scoring';
import { formatPull } from '$lib/scoring/display';

/** One of two runs that are looked at together. */
export interface Side {
  /** 3/8 oz. */
  readonly name: string;
  /** In a sentence: "with 3/8 oz". */
  readonly when: string;
  readonly setup: Setup;
  readonly move: Move;
  readonly hold_s: number;
}

export interface ComparedRow {
  readonly name: string;
  readonly first: string;
  readonly second: string;
  /** The second less the first, with its sign. */
  readonly difference: string;
}

interface Measure {
  readonly name: string;
  readonly of: (result: Result) => number;
  readonly format: (value: number, units: Units) => string;
}

const MEASURES: readonly Measure[] = [
  { name: 'Tip moved', of: tipTravelOf, format: formatLength },
  { name: 'Bait moved', of: ({ travel_m }) => travel_m, format: formatLength },
  {
    name: 'Highest off the bottom',
    of: ({ peak_height_m }) => peak_height_m,
    format: formatLength
  },
  { name: 'Off the bottom for', of: ({ airborne_s }) => airborne_s, format: formatTime },
  {
    name: 'On the bottom',
    of: ({ contact_fraction }) => contact_fraction,
    format: (share) => formatShare(share)
  },
  { name: 'Most pull', of: ({ peak_tip_tension_N }) => peak_tip_tension_N, format: formatPull }
];

function tipTravelOf(result: Result): number {
  return tipTravel(result);
}

export function comparedRows(first: Result, second: Result, units: Units): ComparedRow[] {
  return MEASURES.map(({ name, of, format }) => ({
    name,
    first: format(of(first), units),
    second: format(of(second), units),
    difference: signed(of(second) - of(first), (value) => format(value, units))
  }));
}

function signed(value: number, format: (size: number) => string): string {
  const size = format(Math.abs(value));
  // Half an inch is not nothing: zero is what is written as nothing but zeros.
  if (!/[1-9]/.test(size)) return 'the same';
  return `${value > 0 ? '+' : '−'}${size}`;
}

/** What differed, in one sentence. */
export function comparedText(
  sides: readonly [Side, Side],
  results: readonly [Result, Result],
  units: Units
): string {
  const [first, second] = results.map((result) => didText(result, units));
  const [a, b] = sides;
  return `${a.when.charAt(0).toUpperCase()}${a.when.slice(1)} ${first}; ${b.when} ${second}.`;
}

function didText({ hops, peak_height_m, travel_m }: Result, units: Units): string {
  const came = formatLength(travel_m, units);
  if (peak_height_m < SKIP_M) return `it stayed on the bottom and came ${came}`;
  if (hops.length === 0) return `it skipped along the bottom and came ${came}`;
  return `it rose ${formatLength(peak_height_m, units)} off the bottom and came ${came}`;
}
