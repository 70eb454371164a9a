import { OFF_BOTTOM_M, OUNCE_KG, type SetupInput } from '../model';
import { formatTime, formatWeight, inUnits, type Units } from '../scoring';
import { BOX_OZ } from './box';
import { quickest } from './contact-limit';
import { ft, inch } from './items/draw';
import { measured } from './items/measure';
import { fall, shownDrag } from './items/moves';
import {
  guidesSeeItLift,
  isOverUsual,
  isUnderUsual,
  losesFeel,
  usualOn_kg,
  type DepthAndWind
} from './usual-weight';

/** The drag that each weight of the box is tried with: two feet, from quick to slow, s. */
const DRAG_FT = 2;
const SLOWEST_S = 8;
const DRAGS_S = [1, 1.5, 2, 2.5, 3, 4, 5, 6, SLOWEST_S];
/** The pace at which the pull is read, s: a drag that nearly every weight stays down at. */
const READ_AT_S = 4;
/** Where a drag is tried: half a cast, or close enough for shallow water, m. */
const CAST_M = ft(45);
const SLACK_M = inch(1);
/** Longer than a jig of an ounce falls on any of the lines, s a metre; a lighter one by the root of its weight. */
const LONGEST_S_A_M = 3;

/** What a weight does in this water on this gear. */
export interface WeightRow {
  ounces: number;
  /** From splash to bottom, s; infinite for one that never gets there. Give or take what a skirt leaves open. */
  fall_s: number;
  fall_band_s: number;
  /** Quickest of the tried drags that stays down whatever skirt and slack really are, s; null for none. */
  drag_s: number | null;
  /** Pull at the tip in a slow drag, N. */
  pull_N: number;
}

/** What is asked of a weight: down in time, and down at this pace, in this depth and wind. */
export interface WeightWanted extends DepthAndWind {
  within_s: number;
  drag_s: number;
}

/** The chart of the box for this water and gear: some hundred and fifty runs of the model. */
export function weightChart(setup: SetupInput): WeightRow[] {
  return BOX_OZ.map((ounces) => rowOf(setup, ounces));
}

function rowOf(given: SetupInput, ounces: number): WeightRow {
  const setup: SetupInput = {
    ...given,
    bait: { ...given.bait, mass_kg: massOf({ ounces }) },
    start: { bait_x_m: CAST_M, slack_m: SLACK_M }
  };
  const hold_s = Math.min(60, 4 + (LONGEST_S_A_M * setup.water.depth_m) / Math.sqrt(ounces));
  const { nominal, band } = measured(fall(setup, hold_s), 'fall_s', 'drag');
  const staysDown = (s: number) => {
    const height = measured(shownDrag(setup, ft(DRAG_FT), s), 'peak_height_m', 'slack and drag');
    return [height.nominal, ...height.corners].every((m) => m <= OFF_BOTTOM_M);
  };
  const slow = measured(shownDrag(setup, ft(DRAG_FT), READ_AT_S), 'pull_N', 'drag');
  return {
    ounces,
    fall_s: nominal,
    fall_band_s: band,
    drag_s: quickest(DRAGS_S, staysDown) ?? null,
    pull_N: slow.nominal
  };
}

/** Whether the weight is down in time, as a voice counts: what reads 12 s is down within 12. */
function isDown({ fall_s }: WeightRow, { within_s }: WeightWanted): boolean {
  return Math.round(fall_s) <= within_s;
}

function staysDown({ drag_s }: WeightRow, wanted: WeightWanted): boolean {
  return drag_s !== null && drag_s <= wanted.drag_s;
}

const massOf = ({ ounces }: Pick<WeightRow, 'ounces'>) => ounces * OUNCE_KG;

/**
 * What a weight is called: by the model where it doesn't do what is asked, and by what guides see where it
 * does. What guides tie on is never too light: there it is the gear that holds it up.
 */
const CALLS = {
  light: 'too light',
  gear: 'not on this gear',
  wind: 'light for this wind',
  lifts: 'guides go heavier',
  heavy: 'heavy for this',
  works: 'that works'
} as const;
type Call = keyof typeof CALLS;

/** Heavy is only what something lighter of the box does as well. */
function callOf(row: WeightRow, rows: readonly WeightRow[], wanted: WeightWanted): Call {
  const call = callAlone(row, wanted);
  if (call !== 'works' || !isOverUsual(massOf(row), wanted)) return call;
  const first = rows.find((one) => callAlone(one, wanted) === 'works');
  return first && first.ounces < row.ounces ? 'heavy' : call;
}

function callAlone(row: WeightRow, wanted: WeightWanted): Call {
  const mass_kg = massOf(row);
  if (!isDown(row, wanted) || !staysDown(row, wanted))
    return isUnderUsual(mass_kg, wanted) ? 'light' : 'gear';
  if (losesFeel(mass_kg, wanted)) return 'wind';
  return guidesSeeItLift(mass_kg, wanted.depth_m) ? 'lifts' : 'works';
}

/**
 * What is said of the weight that was picked, after its name: one verdict, the reason that decided it, and
 * what to tie on. How long, how quick and how hard is in the table.
 */
export function weightVerdict(
  row: WeightRow,
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string {
  const call = callOf(row, rows, wanted);
  const tieOn = isEnough(call) ? usualWords(row, wanted, units) : insteadWords(rows, wanted, units);
  return `${CALLS[call]}. ${reasonWords(call, row, wanted)} ${tieOn}`;
}

/**
 * The same of a weight that doesn't do what is asked, with the figure it fails by and not with what to tie
 * on: who picks again finds that. Null for one that does it, and where nothing in the box would.
 */
export function weightMiss(
  row: WeightRow,
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string | null {
  const call = callOf(row, rows, wanted);
  if (isEnough(call) || !rows.some((one) => callAlone(one, wanted) === 'works')) return null;
  return [`${CALLS[call]}.`, reasonWords(call, row, wanted), missedBy(row, wanted, units)]
    .filter(Boolean)
    .join(' ');
}

const isEnough = (call: Call) => call === 'works' || call === 'heavy';

function missedBy(row: WeightRow, wanted: WeightWanted, units: Units): string {
  if (!Number.isFinite(row.fall_s)) return '';
  if (!isDown(row, wanted)) return `Its count here is ${countWords(row)}.`;
  if (staysDown(row, wanted)) return '';
  const drag = inUnits(`{${DRAG_FT} ft|60 cm}`, units);
  if (row.drag_s === null) return `For ${drag} it needs over ${formatTime(SLOWEST_S)}.`;
  return `For ${drag} it needs ${formatTime(row.drag_s)}.`;
}

function reasonWords(call: Call, row: WeightRow, wanted: WeightWanted): string {
  const isInTime = isDown(row, wanted);
  const sure = isInTime === isDown(withBand(row, isInTime ? 1 : -1), wanted) ? '' : 'probably ';
  switch (call) {
    case 'works':
      return `It’s ${sure}down in time and stays down.`;
    case 'heavy':
      return 'It’s down and stays down, but it drops like a rock: fish see less of the fall, and in rock it wedges.';
    case 'wind':
      return 'The belly in the line takes your feel.';
    case 'lifts':
      return 'They see it lift here; by the model it stays down.';
  }
  if (!Number.isFinite(row.fall_s)) return 'It isn’t down after a minute.';
  return isInTime ? 'It may lift at that pace.' : `It ${sure}gets down too late.`;
}

/** The same weight with all that a skirt leaves open: later by it, or sooner. */
const withBand = (row: WeightRow, way: 1 | -1): WeightRow => ({
  ...row,
  fall_s: row.fall_s + way * row.fall_band_s
});

const isUsual = (one: WeightRow, wanted: WeightWanted) =>
  Math.abs(massOf(one) - usualOn_kg(wanted)) < 1e-6;

/** Common practice beside the model: which one guides mostly tie on. */
function usualWords(row: WeightRow, wanted: WeightWanted, units: Units): string {
  return isUsual(row, wanted)
    ? 'Most guides tie it on here.'
    : `Most guides use ${formatWeight(usualOn_kg(wanted), units)} here.`;
}

/** What to tie on where a pick doesn't do what is asked, and what guides do. */
export function insteadWords(
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string {
  const wind = wanted.wind === 'strong' ? ': a size up for the wind' : '';
  const usual = `ost guides use ${formatWeight(usualOn_kg(wanted), units)} here${wind}.`;
  const enough = rows.find((one) => callAlone(one, wanted) === 'works');
  const heaviest = rows[rows.length - 1];
  if (!enough) {
    const help = isDown(heaviest, wanted) ? 'drag slower' : 'use a smaller trailer';
    return `Nothing in the box does it: ${help}. M${usual}`;
  }
  const tieOn = `Tie on ${formatWeight(massOf(enough), units)}`;
  const orMore = enough === heaviest ? '' : ' or more';
  if (isUsual(enough, wanted)) return `${tieOn}, like most guides${orMore && `,${orMore}`}${wind}.`;
  const onThisGear = isUnderUsual(massOf(enough), wanted) ? '' : ' on this gear';
  return `${tieOn}${orMore}${onThisGear}; m${usual}`;
}

/**
 * What the table, all by the model, leaves out: which of the box guides see lift in this water, and where the
 * model has it stay down. Empty for none.
 */
export function guidesLiftWords(
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string {
  return rows
    .filter((row) => guidesSeeItLift(massOf(row), wanted.depth_m))
    .map((row) => {
      const model = staysDown(row, wanted) ? '; the model keeps it down' : '';
      return `Guides see ${formatWeight(massOf(row), units)} lift here${model}.`;
    })
    .join(' ');
}

/** Up to how many times as hard a pull is called so; under the first no hand tells two apart. Design values. */
const FELT: readonly { under: number; says: string }[] = [
  { under: 1.1, says: 'about the same' },
  { under: 1.35, says: 'a bit harder' },
  { under: 1.7, says: 'half again as hard' },
  { under: 1.9, says: 'nearly twice' },
  { under: 2.15, says: 'twice' },
  { under: 2.6, says: 'over twice' }
];

/** A pull in ounces says nothing to a hand; what it is of the lightest one's does. Empty for the lightest. */
export function feltWords(row: WeightRow, lightest: WeightRow): string {
  if (row.ounces === lightest.ounces) return '';
  const ratio = row.pull_N / lightest.pull_N;
  return FELT.find(({ under }) => ratio < under)?.says ?? `${Math.round(ratio)} times`;
}

/** A fall as a voice counts it: "9 s, 5 to 12". */
export function countWords({
  fall_s,
  fall_band_s
}: Pick<WeightRow, 'fall_s' | 'fall_band_s'>): string {
  const [least, middle, most] = [-1, 0, 1].map((way) => Math.round(fall_s + way * fall_band_s));
  return `${formatTime(middle)}${least < most ? `, ${least} to ${most}` : ''}`;
}
