import { fahrenheitToCelsius, FOOT_M, INCH_M, OUNCE_KG, POUND_KG } from '../model';

/**
 * What a person types, read into SI: the other way from display.ts. "7 ft 2 in", 7'2", 14 in, 35 cm,
 * 1.2 m, "1 1/4", ½; a bare number is in the unit that the field says.
 */
const LENGTHS_M = { ft: FOOT_M, in: INCH_M, m: 1, cm: 0.01, mm: 0.001 } as const;
const WEIGHTS_KG = { oz: OUNCE_KG, lb: POUND_KG, g: 0.001, kg: 1 } as const;
export type LengthUnit = keyof typeof LENGTHS_M;
export type WeightUnit = keyof typeof WEIGHTS_KG;

const FRACTIONS: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4' };
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[′’']/g, ' ft '],
  [/[″”"]/g, ' in '],
  [/\b(feet|foot)\b/g, 'ft'],
  [/\b(inch(es)?)\b/g, 'in'],
  [/\b(ounces?)\b/g, 'oz'],
  [/\b(grams?)\b/g, 'g'],
  [/[\u2212–]/g, '-'],
  [/(?<=\d),(?=\d)/g, '.']
];
/** A whole number with a fraction, a fraction, or a decimal; then a unit or none. */
const PART = /^(-?)(?:(\d+)\s+)?(?:(\d+)\/(\d+)|(\d*\.?\d+))\s*([a-z]+)?\s*/;

/** Metres; null for what is no length. */
export function typedLength_m(text: string, bare: LengthUnit): number | null {
  return typed(text, LENGTHS_M, bare);
}

/** Kilograms; null for what is no weight. */
export function typedWeight_kg(text: string, bare: WeightUnit): number | null {
  return typed(text, WEIGHTS_KG, bare);
}

/** A plain number, "3" or "2 1/2"; null for none. */
export function typedNumber(text: string): number | null {
  return typed(text, { times: 1 }, 'times');
}

/** °C from what is typed in °F or °C. */
export function typedTemperature_C(text: string, bare: 'F' | 'C'): number | null {
  const value = typedNumber(text.replace(/°?\s*[fc]\s*$/i, ''));
  const unit = /([fc])\s*$/i.exec(text)?.[1].toUpperCase() ?? bare;
  if (value === null) return null;
  return unit === 'F' ? fahrenheitToCelsius(value) : value;
}

function typed<Unit extends string>(
  text: string,
  units: Readonly<Record<Unit, number>>,
  bare: Unit
): number | null {
  let rest = plain(text);
  let sum = 0;
  let smallest = Infinity;
  let isNegative = false;
  if (rest === '') return null;
  while (rest !== '') {
    const [all, minus, whole, top, bottom, decimal, unit = bare] = PART.exec(rest) ?? [];
    if (all === undefined || !Object.hasOwn(units, unit)) return null;
    const size = units[unit as Unit];
    // "7 ft 2 in" goes down; a minus stands before all of it.
    if (size >= smallest || (minus && smallest < Infinity)) return null;
    isNegative ||= minus === '-';
    sum += size * (Number(whole ?? 0) + (top ? Number(top) / Number(bottom) : Number(decimal)));
    smallest = size;
    rest = rest.slice(all.length);
  }
  if (!Number.isFinite(sum)) return null;
  return isNegative ? -sum : sum;
}

function plain(text: string): string {
  const spelled = text.toLowerCase().replace(/[½¼¾]/g, (sign) => ` ${FRACTIONS[sign]}`);
  return SIGNS.reduce((read, [sign, word]) => read.replace(sign, word), spelled)
    .replace(/\s+/g, ' ')
    .trim();
}
