import { FOOT_M, INCH_M, OUNCE_KG, GRAVITY_M_S2 } from '../model';
import { inUnits } from '../scoring';
import { MEASURES, type MeasureName } from './items/measures';

/** What a run's quantities are said to lie between, SI. */
type Holds = Partial<Record<MeasureName, readonly [number, number]>>;

/** "About" so much is within a quarter: nobody in a boat means less by it. A design value. */
const ABOUT = 0.25;
/** A range is said in round numbers. */
const ROUNDED = 0.05;
/** A few inches, of two to six. */
const A_FEW_M: readonly [number, number] = [2 * INCH_M, 6 * INCH_M];

const OUNCE_N = OUNCE_KG * GRAVITY_M_S2;
const OF_UNIT = {
  ft: ['length', FOOT_M],
  in: ['length', INCH_M],
  second: ['time', 1],
  oz: ['pull', OUNCE_N],
  ounce: ['pull', OUNCE_N],
  pound: ['pull', 16 * OUNCE_N]
} as const;

const NUMBER = String.raw`(?:half an? |\d[\d½]*)`;
const SAID = new RegExp(
  String.raw`(less than |under |over |more than |can’t [a-z ]*?)?(${NUMBER})(?: to (${NUMBER}))?\s?(ft|in|second|oz|ounce|pound)s?\b(?! rod)( or more| and more)?`,
  'gi'
);

/**
 * Where a range is wider than the words beside it: "about 5 in" is no 2 to 14. Every number of the words is
 * read as the learner reads it, in feet and inches, and held against the quantity of its kind.
 */
export function wideFaults(says: string, holds: Holds): string[] {
  const read = inUnits(says, 'imperial').replaceAll('\u00a0', ' ');
  const few = /\ba few inches\b/i.test(read)
    ? [{ kind: 'length', least: A_FEW_M[0], most: A_FEW_M[1] }]
    : [];
  const readings = [...few, ...[...read.matchAll(SAID)].map(readingOf)];
  return readings.flatMap(({ kind, least, most }) =>
    Object.entries(holds)
      .filter(([name]) => MEASURES[name as MeasureName].quantity === kind)
      .filter(([, [low, high]]) => low < least || high > most)
      .map(([name, [low, high]]) => `${name} ${low} to ${high} is wider than "${read}"`)
  );
}

function readingOf([, before, first, second, unit, after]: RegExpMatchArray | RegExpExecArray) {
  const [kind, size] = OF_UNIT[unit.toLowerCase() as keyof typeof OF_UNIT];
  const value = numberOf(first) * size;
  if (after || /over|more/i.test(before ?? ''))
    return { kind, least: value * (1 - ROUNDED), most: Infinity };
  if (before) return { kind, least: -Infinity, most: value * (1 + ROUNDED) };
  if (second)
    return { kind, least: value * (1 - ROUNDED), most: numberOf(second) * size * (1 + ROUNDED) };
  return { kind, least: value * (1 - ABOUT), most: value * (1 + ABOUT) };
}

function numberOf(said: string): number {
  return said.startsWith('half') ? 0.5 : Number(said.replace('½', '.5'));
}
