import { FOOT_M, INCH_M } from '$lib/model';
import type { PredictQuestion } from '$lib/course';
import type { Units } from '$lib/scoring';

type Say = NonNullable<PredictQuestion['say']>;

/** How a number is said: its unit, and what one press of a stepper is worth in it. */
export interface SaidUnit {
  name: string;
  /** In full, for who hears the page. */
  fullName: string;
  step: number;
  /** Of one unit, SI. */
  size: number;
  /** That can be said: more than any rod, reel or fall in a lesson gives, and any length alike. */
  most: number;
}

const FEET = { name: 'ft', fullName: 'feet', step: 0.5, size: FOOT_M, most: 50 };
const METERS = { name: 'm', fullName: 'meters', step: 0.1, size: 1, most: 15 };
const INCHES = { name: 'in', fullName: 'inches', step: 3, size: INCH_M, most: 600 };
const CENTIMETERS = { name: 'cm', fullName: 'centimeters', step: 10, size: 0.01, most: 1500 };
const SECONDS = { name: 's', fullName: 'seconds', step: 1, size: 1, most: 600 };

export function saidUnit(say: Say, units: Units): SaidUnit {
  if (say === 'seconds') return SECONDS;
  if (say === 'feet') return units === 'imperial' ? FEET : METERS;
  return units === 'imperial' ? INCHES : CENTIMETERS;
}

/** What was typed, in the unit; null for what is no number from nothing up. */
export function readNumber(typed: string): number | null {
  const number = Number(typed.trim().replace(',', '.'));
  return typed.trim() !== '' && Number.isFinite(number) && number >= 0 ? number : null;
}

/** One press up or down from what is typed: to the next whole step, never below nothing. */
export function stepped(typed: string, { step }: SaidUnit, by: 1 | -1): string {
  const steps = (readNumber(typed) ?? 0) / step;
  const next = by > 0 ? Math.floor(steps + 1e-6) + 1 : Math.ceil(steps - 1e-6) - 1;
  return String(Number((Math.max(0, next) * step).toFixed(2)));
}

/** What was typed, SI, or what is wrong with it. */
export function readSaid(typed: string, unit: SaidUnit): { said: number } | { fault: string } {
  const number = readNumber(typed);
  if (number !== null && number <= unit.most) return { said: number * unit.size };
  return { fault: `Your call: “${typed.trim()}” isn’t from 0 to ${unit.most} ${unit.fullName}.` };
}
