import { OFF_BOTTOM_M, OUNCE_KG, type SetupInput } from '../model';
import { formatTime, formatWeight, type Units } from '../scoring';
import { BOX_OZ } from './box';
import { quickest } from './contact-limit';
import { ft, inch } from './items/draw';
import { measured } from './items/measure';
import { fall, shownDrag } from './items/moves';

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

/** What is asked of a weight: down in time, and down at this pace. */
export interface WeightWanted {
  within_s: number;
  drag_s: number;
  /** What most guides tie on there, kg (see usual-weight.ts). */
  usual_kg: number;
}

/** The chart of the box for this water and gear: some hundred and fifty runs of the model. */
export function weightChart(setup: SetupInput): WeightRow[] {
  return BOX_OZ.map((ounces) => rowOf(setup, ounces));
}

function rowOf(given: SetupInput, ounces: number): WeightRow {
  const setup: SetupInput = {
    ...given,
    bait: { ...given.bait, mass_kg: ounces * OUNCE_KG },
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

/** Whether the weight does all that is asked. */
export function doesIt(row: WeightRow, wanted: WeightWanted): boolean {
  return isDown(row, wanted) && staysDown(row, wanted);
}

/**
 * What the model says of the weight that was picked: does it do, is it down, does it stay down, is it felt
 * beside the lightest, and which do where it does not.
 */
export function weightVerdict(
  row: WeightRow,
  rows: readonly WeightRow[],
  wanted: WeightWanted,
  units: Units
): string {
  const drag = staysDown(row, wanted)
    ? 'It stays down at that pace.'
    : 'At that pace it may leave the bottom.';
  const told = [downWords(row, wanted), drag, feltWords(row, rows[0], units)];
  const usual = usualWords(row, wanted, units);
  if (doesIt(row, wanted)) return ['That works.', ...told, usual].join(' ');
  const enough = rows.find((one) => doesIt(one, wanted));
  const fix = enough
    ? `${formatWeight(enough.ounces * OUNCE_KG, units)}${enough === rows.at(-1) ? '' : ' and up'} would do.`
    : 'Nothing in the box does: a thinner line falls faster.';
  return ['Too light.', ...told, fix, usual].join(' ');
}

/** Common practice beside the model: several weights may do, and guides mostly tie on one. */
function usualWords({ ounces }: WeightRow, { usual_kg }: WeightWanted, units: Units): string {
  const isUsual = Math.abs(ounces * OUNCE_KG - usual_kg) < 1e-6;
  return isUsual
    ? 'Most guides tie that on here.'
    : `Most guides tie on ${formatWeight(usual_kg, units)} here.`;
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

/** A pull in ounces says nothing to a hand; how many times another one does. */
function feltWords({ ounces, pull_N }: WeightRow, lightest: WeightRow, units: Units): string {
  const times = Math.round(pull_N / lightest.pull_N);
  if (ounces === lightest.ounces) return 'You’d feel it least of the box.';
  const than = formatWeight(lightest.ounces * OUNCE_KG, units);
  return times < 2
    ? `You’d feel it pull a little harder than ${than}.`
    : `You’d feel it pull about ${times} times as hard as ${than}.`;
}

/** A fall as a voice counts it: "9 s, 5 to 12". */
export function countWords({
  fall_s,
  fall_band_s
}: Pick<WeightRow, 'fall_s' | 'fall_band_s'>): string {
  const [least, middle, most] = [-1, 0, 1].map((way) => Math.round(fall_s + way * fall_band_s));
  return `${formatTime(middle)}${least < most ? `, ${least} to ${most}` : ''}`;
}
