import { FOOT_M, INCH_M } from '$lib/model';
import type { MarkAnswer } from '$lib/course/items';
import { formatLength, formatTime, type Units } from '$lib/scoring';

type MarkQuantity = MarkAnswer['quantity'];

export interface RulerMark {
  value: number;
  says: string;
  /** Which end of the words stands at the mark: those at the ruler's ends stay inside it. */
  anchor: 'start' | 'middle' | 'end';
}

/** Marks of a ruler from 0 to `most`, at most a dozen, round for the learner. */
export function marksOf(most: number, quantity: MarkQuantity, units: Units): RulerMark[] {
  const round =
    quantity === 'time' ? [1, 2, 5, 10, 20] : units === 'imperial' ? IMPERIAL_M : METRIC_M;
  const step = round.find((one) => most / one <= MOST_MARKS + 1e-9) ?? round[round.length - 1];
  const count = Math.floor(most / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => ({
    value: i * step,
    says: said(i * step, quantity, units, 'short'),
    anchor: i === 0 ? 'start' : (i + END) * step > most ? 'end' : 'middle'
  }));
}

/** A mark nearer to the ruler's end than this part of a step has its words before it. */
const END = 0.2;

const MOST_MARKS = 8;
const IMPERIAL_M = [INCH_M * 2, INCH_M * 6, FOOT_M, FOOT_M * 2, FOOT_M * 5];
const METRIC_M = [0.05, 0.1, 0.2, 0.5, 1, 2];

/** What one step of the hand is worth: half an inch, a centimetre, a fifth of a second. */
export function stepOf(quantity: MarkQuantity, units: Units): number {
  if (quantity === 'time') return 0.2;
  return units === 'imperial' ? INCH_M / 2 : 0.01;
}

export function said(
  value: number,
  quantity: MarkQuantity,
  units: Units,
  style: 'words' | 'short' = 'words'
): string {
  return quantity === 'time' ? formatTime(value) : formatLength(value, units, style);
}
