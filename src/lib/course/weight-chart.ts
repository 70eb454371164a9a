import { OFF_BOTTOM_M, OUNCE_KG, type SetupInput } from '../model';
import { formatTime, formatWeight, type Units } from '../scoring';
import { BOX_OZ } from './box';
import { quickest } from './contact-limit';
import { ft, inch } from './items/draw';
import { measured } from './items/measure';
import { fall, shownDrag } from './items/moves';
import {
  guidesSeeItLift,
  isUnderUsual,
  losesFeel,
  usualOn_kg,
  type DepthAndWind
} from './usual-weight';

/** The drag that each weight of the box is tried with: two feet, from quick to slow, s. */
const DRAG_FT = 2;
const DRAGS_S = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8];
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
  light: 'Too light.',
  gear: 'Not on this gear.',
  wind: 'Light for this wind.',
  lifts: 'Guides go heavier.',
  works: 'That works.'
} as const;

function callOf(row: WeightRow, wanted: WeightWanted): keyof typeof CALLS {
  const mass_kg = massOf(row);
  if (!isDown(row, wanted) || !staysDown(row, wanted))
    return isUnderUsual(mass_kg, wanted) ? 'light' : 'gear';
  if (losesFeel(mass_kg, wanted)) return 'wind';
  return guidesSeeItLift(mass_kg, wanted.depth_m) ? 'lifts' : 'works';
}

/**
 * What is said of the weight that was picked: does it do, is it down, does it stay down, is it felt beside
 * the lightest, and which do where it does not.
 */
export function weightVerdict(
  row: WeightRow,
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string {
  return [
    CALLS[callOf(row, wanted)],
    downWords(row, wanted),
    dragWords(row, wanted),
    feltWords(row, rows[0], units),
    insteadWords(row, rows, wanted, units)
  ].join(' ');
}

function dragWords(row: WeightRow, wanted: WeightWanted): string {
  if (!staysDown(row, wanted)) return 'At that pace it may leave the bottom.';
  if (guidesSeeItLift(massOf(row), wanted.depth_m))
    return 'By the model it stays down; guides see it lift here.';
  return losesFeel(massOf(row), wanted)
    ? 'It stays down at that pace, but in this wind the belly takes your feel.'
    : 'It stays down at that pace.';
}

/** Which would do, and, as common practice beside the model, which guides mostly tie on. */
function insteadWords(
  row: WeightRow,
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string {
  const isUsual = (one: WeightRow) => Math.abs(massOf(one) - usualOn_kg(wanted)) < 1e-6;
  const does = (one: WeightRow) => callOf(one, wanted) === 'works';
  const usual = `Most guides tie on ${formatWeight(usualOn_kg(wanted), units)} here`;
  if (does(row)) return isUsual(row) ? `${usual}, too.` : `${usual}.`;
  const enough = rows.find(does);
  if (!enough) return `Nothing in the box does: smaller trailer, or slower. ${usual}.`;
  const isHeaviest = enough === rows.at(-1);
  if (isUsual(enough)) return `${usual}: that${isHeaviest ? '' : ' or heavier'} would do.`;
  return `${formatWeight(massOf(enough), units)}${isHeaviest ? '' : ' and up'} would do. ${usual}.`;
}

function downWords(row: WeightRow, wanted: WeightWanted): string {
  const { fall_s, fall_band_s } = row;
  if (!Number.isFinite(fall_s)) return 'It isn’t down after a minute.';
  const isSure = Math.round(fall_s + fall_band_s) <= wanted.within_s;
  const isSurelyLate = Math.round(fall_s - fall_band_s) > wanted.within_s;
  const inTime = isSure ? 'in time' : 'probably in time';
  const late = isSurelyLate ? 'too late' : 'probably too late';
  return `Down in about ${countWords(row)}: ${isDown(row, wanted) ? inTime : late}.`;
}

/** Less than this many times as hard no hand tells apart. A design value. */
const FELT_TIMES = 1.1;

/** A pull in ounces says nothing to a hand; how many times another one does. */
function feltWords(row: WeightRow, lightest: WeightRow, units: Units): string {
  const than = formatWeight(massOf(lightest), units);
  const ratio = row.pull_N / lightest.pull_N;
  const times = Math.round(ratio);
  if (row.ounces === lightest.ounces) return 'You’d feel it least of the box.';
  if (ratio < FELT_TIMES) return `You’d feel it pull like ${than}.`;
  if (times < 2) return `You’d feel it pull a little harder than ${than}.`;
  return `You’d feel it pull about ${times === 2 ? 'twice' : `${times} times`} as hard as ${than}.`;
}

/** A fall as a voice counts it: "9 s, 5 to 12". */
export function countWords({
  fall_s,
  fall_band_s
}: Pick<WeightRow, 'fall_s' | 'fall_band_s'>): string {
  const [least, middle, most] = [-1, 0, 1].map((way) => Math.round(fall_s + way * fall_band_s));
  return `${formatTime(middle)}${least < most ? `, ${least} to ${most}` : ''}`;
}
