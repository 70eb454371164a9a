import { FOOT_M, INCH_M } from '$lib/model';
import { isWithin, type MarkAnswer } from '$lib/course/items';
import { formatLength, formatTenths, type Units } from '$lib/scoring';

type MarkQuantity = MarkAnswer['quantity'];

export interface RulerMark {
  value: number;
  says: string;
  /** Which end of the words stands at the mark: those at the ruler's ends stay inside it. */
  anchor: 'start' | 'middle' | 'end';
}

/** Marks of a ruler from 0 to `most`, at most a dozen, round for the learner. */
export function marksOf(most: number, quantity: MarkQuantity, units: Units): RulerMark[] {
  const step = markStep(most, quantity, units);
  return upTo(most, step).map((value, i) => ({
    value,
    says: value === 0 ? '0' : said(value, quantity, units),
    anchor: i === 0 ? 'start' : (i + END) * step > most ? 'end' : 'middle'
  }));
}

/** Where the short marks stand: as close as a place is graded, so that it can be told on paper. */
export function fineMarksOf(
  { most, band, quantity }: Pick<MarkAnswer, 'most' | 'band' | 'quantity'>,
  units: Units
): number[] {
  const parts = markStep(most, quantity, units);
  const dividing = fineSteps(quantity, units).filter((one) => isWhole(parts / one));
  return upTo(most, dividing.findLast((one) => one <= band) ?? dividing[0]);
}

function markStep(most: number, quantity: MarkQuantity, units: Units): number {
  const round =
    quantity === 'time' ? [1, 2, 5, 10, 20] : units === 'imperial' ? IMPERIAL_M : METRIC_M;
  return round.find((one) => most / one <= MOST_MARKS + 1e-9) ?? round[round.length - 1];
}

function fineSteps(quantity: MarkQuantity, units: Units): readonly number[] {
  if (quantity === 'time') return [1, 2, 5, 10];
  return units === 'imperial' ? FINE_IMPERIAL_M : FINE_METRIC_M;
}

function upTo(most: number, step: number): number[] {
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, i) => i * step);
}

const isWhole = (ratio: number) => Math.abs(ratio - Math.round(ratio)) < 1e-9;

/** A mark nearer to the ruler's end than this part of a step has its words before it. */
const END = 0.2;

const MOST_MARKS = 8;
const IMPERIAL_M = [INCH_M * 2, INCH_M * 6, FOOT_M, FOOT_M * 2, FOOT_M * 5];
const METRIC_M = [0.05, 0.1, 0.2, 0.5, 1, 2];
const FINE_IMPERIAL_M = [1, 2, 3, 6, 12].map((inches) => inches * INCH_M);
const FINE_METRIC_M = [0.025, 0.05, 0.1, 0.25, 0.5];

/** What one step of the hand is worth, no finer than a place is said: an inch, a centimeter, a fifth of a second. */
export function stepOf(quantity: MarkQuantity, units: Units): number {
  if (quantity === 'time') return 0.2;
  return units === 'imperial' ? INCH_M : 0.01;
}

/** A place, so that no two that a hand can set are said alike. */
export function said(value: number, quantity: MarkQuantity, units: Units): string {
  return quantity === 'time' ? formatTenths(value) : formatLength(value, units);
}

type Graded = Pick<MarkAnswer, 'key' | 'band' | 'quantity'>;

/** The first and the last place that a hand can set and that is right: "2 ft 7 in to 3 ft 4 in". */
export function rightPlaces(answer: Graded, units: Units): string {
  const { key, band, quantity } = answer;
  const step = stepOf(quantity, units);
  const [below, above] = [Math.floor((key - band) / step), Math.ceil((key + band) / step)];
  const isRight = (mark: number) => isWithin(answer, mark * step);
  const ends = [isRight(below) ? below : below + 1, isRight(above) ? above : above - 1];
  return ends.map((mark) => said(mark * step, quantity, units)).join(' to ');
}
