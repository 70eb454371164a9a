import { celsiusToFahrenheit, FOOT_M, GRAVITY_M_S2, INCH_M, OUNCE_KG } from '../model';

/**
 * The one place where SI becomes what a learner reads. Rounding, halves away from zero:
 *
 * | quantity | imperial                                 | metric                          |
 * | -------- | ---------------------------------------- | ------------------------------- |
 * | length   | whole inch, below 3 in the half inch: ½  | whole cm, from 1 m on in m to cm |
 * | depth    | whole foot                               | a tenth of a metre              |
 * | speed    | a tenth of a ft/s, from 10 on whole      | a hundredth of a m/s            |
 * | weight   | a sixteenth of an ounce, reduced         | gram, below 10 g a tenth        |
 * | pull     | a tenth of an ounce, the weight of it    | a hundredth of a newton         |
 */
export type Units = 'imperial' | 'metric';

/** `short` writes 1′ 1″ for a ruler or an axis; `words` is for sentences and big numerals. */
export type LengthStyle = 'words' | 'short';

/** A line is never broken here: between a number and its unit, and within 1 ft 1 in. */
const NO_BREAK = '\u00a0';

const INCHES_A_FOOT = 12;
const HALF_INCH_BELOW_IN = 3;
const QUARTERS = 4;
const IN_WORDS = [`${NO_BREAK}ft`, `${NO_BREAK}in`] as const;
const SIXTEENTHS = 16;
const CM_A_M = 100;
const GRAM_KG = 1e-3;
const TENTH_BELOW = 10;

/** A number and its unit, which stay on one line wherever they are read. */
export function withUnit(number: number | string, unit: string): string {
  return `${number}${NO_BREAK}${unit}`;
}

/** Bait and tip travel, heights, bands: 1 ft 1 in, or 33 cm. Negative lengths keep their sign. */
export function formatLength(m: number, units: Units, style: LengthStyle = 'words'): string {
  const sign = m < 0 ? '−' : '';
  const text = units === 'metric' ? metricLength(Math.abs(m)) : feetAndInches(Math.abs(m), style);
  return isZero(text) ? text : sign + text;
}

/** Steps in which a guide names a distance, largest first: one of them is meant where it is this near. */
const ROUND_M: Record<Units, readonly number[]> = {
  imperial: [FOOT_M / 2, FOOT_M / 4],
  metric: [0.1, 0.05]
};
const MEANT_PART = 0.025;

/** A distance as it is asked for: 1 ft, or 30 cm and not the 30.48 that a foot has. */
export function formatAsked(m: number, units: Units): string {
  const round_m = ROUND_M[units].map((step_m) => Math.round(m / step_m) * step_m);
  return formatLength(round_m.find((one) => Math.abs(one - m) <= MEANT_PART * m) ?? m, units);
}

/** A length as formatLength tells it, m: inches, halves of them below three, or centimetres. */
export function toldLength(m: number, units: Units): number {
  if (units === 'metric') return Math.round(m * CM_A_M) / CM_A_M;
  const exact = m / INCH_M;
  const grain = Math.abs(exact) < HALF_INCH_BELOW_IN ? 2 : 1;
  return (Math.round(exact * grain) / grain) * INCH_M;
}

/** Water depth and cast: 12 ft, or 3.7 m. */
export function formatDepth(m: number, units: Units): string {
  return units === 'metric' ? withUnit(trimmed(m, 1), 'm') : withUnit(Math.round(m / FOOT_M), 'ft');
}

/** 0.8 ft/s, or 0.25 m/s. */
export function formatSpeed(m_s: number, units: Units): string {
  return units === 'metric'
    ? withUnit(trimmed(m_s, 2), 'm/s')
    : withUnit(wholeFrom10(m_s / FOOT_M), 'ft/s');
}

/** The way that a hand counts a jig's pace over, m. */
const COUNTED_M: Record<Units, number> = { imperial: FOOT_M, metric: 0.3 };
/** Below this a hand tells tenths of a second; nobody counts less than one, or more than a minute, s. */
const TENTHS_BELOW_S = 3;
const TENTH_S = 0.1;
const MINUTE_S = 60;

/** A jig's pace as a hand counts it: 1 ft in 5 s, 30 cm in 1.2 s; over 1 ft in 0.1 s where it flew. */
export function formatPace(m_s: number, units: Units): string {
  if (m_s <= 0) return 'not at all';
  const s = COUNTED_M[units] / m_s;
  if (s > MINUTE_S) return 'hardly at all';
  const text = `${formatLength(COUNTED_M[units], units)} in ${formatTime(counted(s))}`;
  return s < TENTH_S ? `over ${text}` : text;
}

const counted = (s: number): number => (s < TENTHS_BELOW_S ? Math.max(s, TENTH_S) : Math.round(s));

/** A jig's slowest and quickest pace, above 0: 1 ft in 0.8 to 4 s. */
export function formatPaces(paces_m_s: readonly [number, number], units: Units): string {
  return `${formatLength(COUNTED_M[units], units)} in ${countedTimes(paces_m_s, units)}`;
}

/** The same as what a hand is to take: 0.8 to 4 s for each foot. */
export function formatTimesEach(paces_m_s: readonly [number, number], units: Units): string {
  const each = units === 'imperial' ? 'foot' : formatLength(COUNTED_M[units], units);
  return `${countedTimes(paces_m_s, units)} for each ${each}`;
}

function countedTimes([slow_m_s, fast_m_s]: readonly [number, number], units: Units): string {
  const [least] = formatTime(counted(COUNTED_M[units] / fast_m_s)).split('\u00a0');
  return `${least} to ${formatTime(counted(COUNTED_M[units] / slow_m_s))}`;
}

/** International mile an hour. */
export const MPH_M_S = 0.44704;

/** Wind, and how a boat drifts in it: "13 mph", "0.7 mph". */
export function formatWind(m_s: number, units: Units): string {
  return units === 'metric'
    ? withUnit(trimmed(m_s, 1), 'm/s')
    : withUnit(wholeFrom10(m_s / MPH_M_S), 'mph');
}

/** A value beside its limits: what lies outside and rounds to the limit is said to be over or under it. */
export function formatBeside(
  value: number,
  [low, high]: readonly [number, number],
  format: (value: number) => string
): string {
  const text = format(value);
  if (value > high && text === format(high)) return `just over ${text}`;
  return value < low && text === format(low) ? `just under ${text}` : text;
}

/** Lengths nearer to each other are one and the same, m: what rounding leaves. */
export const LEAST_M = 1e-9;

/** A way beside its limits: what rounds to one that it lies outside is told finer, or else as over or under it. */
export function formatWay(m: number, limits: readonly [number, number], units: Units): string {
  const beside = formatBeside(m, limits, (one) => formatLength(one, units));
  const [low, high] = limits.map((limit) => toldLength(limit, units));
  const fine_m = fineLength(m, units);
  const isFiner =
    beside !== formatLength(m, units) && (fine_m > high + LEAST_M || fine_m < low - LEAST_M);
  return isFiner ? formatFine(m, units) : beside;
}

/** A length told finer than others: to a quarter of an inch, or half a centimetre. */
export function formatFine(m: number, units: Units): string {
  const fine_m = fineLength(m, units);
  if (units === 'imperial')
    return inFeet(Math.round((fine_m / INCH_M) * QUARTERS), QUARTERS, IN_WORDS);
  return fine_m < 1
    ? withUnit(trimmed(fine_m * CM_A_M, 1), 'cm')
    : withUnit(trimmed(fine_m, 3), 'm');
}

/** A length as formatFine tells it, m. */
export function fineLength(m: number, units: Units): number {
  const grain_m = units === 'imperial' ? INCH_M / QUARTERS : 0.5 / CM_A_M;
  return Math.round(m / grain_m) * grain_m;
}

/** 5/8 oz, or 18 g. */
export function formatWeight(kg: number, units: Units): string {
  if (units === 'imperial') {
    return withUnit(ofAnOunce(Math.round((kg / OUNCE_KG) * SIXTEENTHS)), 'oz');
  }
  const grams = kg / GRAM_KG;
  return withUnit(grams < TENTH_BELOW ? trimmed(grams, 1) : Math.round(grams), 'g');
}

/** Pull of a line: 1.8 oz, or 0.50 N. */
export function formatPull(newton: number, units: Units, ozDigits = 1): string {
  const oz = newton / GRAVITY_M_S2 / OUNCE_KG;
  return units === 'metric'
    ? withUnit(newton.toFixed(2), 'N')
    : withUnit(oz.toFixed(ozDigits), 'oz');
}

/** 0.012 in, or 0.30 mm. */
export function formatDiameter(m: number, units: Units): string {
  return units === 'metric'
    ? withUnit((m * 1000).toFixed(2), 'mm')
    : withUnit((m / INCH_M).toFixed(3), 'in');
}

/** 59 °F, or 15 °C. */
export function formatTemperature(degC: number, units: Units): string {
  return units === 'metric'
    ? withUnit(Math.round(degC), '°C')
    : withUnit(Math.round(celsiusToFahrenheit(degC)), '°F');
}

/** Alike in both: 2 s, 0.4 s. */
export function formatTime(s: number): string {
  return withUnit(wholeFrom10(s), 's');
}

/** The same in tenths however long: 13.3 s, which a count of 13 falls short of. */
export function formatTenths(s: number): string {
  return withUnit(trimmed(s, 1), 's');
}

/** 0.95 is 95%: no space, as Americans write it. With `digits` behind the point: 0.0123 is 1.2%. */
export function formatShare(share: number, digits: 0 | 1 = 0): string {
  return digits === 0 ? `${Math.round(share * 100)}%` : `${(share * 100).toFixed(digits)}%`;
}

function metricLength(m: number): string {
  const cm = Math.round(m * CM_A_M);
  return cm < CM_A_M ? withUnit(cm, 'cm') : withUnit(trimmed(cm / CM_A_M, 2), 'm');
}

function feetAndInches(m: number, style: LengthStyle): string {
  const exact = m / INCH_M;
  const halves = exact < HALF_INCH_BELOW_IN ? Math.round(exact * 2) : Math.round(exact) * 2;
  return inFeet(halves, 2, style === 'short' ? ['′', '″'] : IN_WORDS);
}

/** So many parts of an inch, in feet and inches. */
function inFeet(parts: number, of: number, [ft, inch]: readonly [string, string]): string {
  const feet = Math.floor(parts / (of * INCHES_A_FOOT));
  const rest = parts - feet * of * INCHES_A_FOOT;
  if (feet === 0) return `${fraction(rest, of)}${inch}`;
  return rest === 0 ? `${feet}${ft}` : `${feet}${ft}${NO_BREAK}${fraction(rest, of)}${inch}`;
}

/** Beside a whole number a stroke would be read with it: 1 1/2 as eleven halves. */
const SIGNS: Readonly<Record<string, string>> = { '1/2': '½', '1/4': '¼', '3/4': '¾' };

/** Inches in halves or quarters, as on a tape: ½, 9¾. */
function fraction(parts: number, of: number): string {
  const [whole, part] = mixed(parts, of);
  return `${whole || !part ? whole : ''}${SIGNS[part] ?? ''}`;
}

/** As a jig's weight is printed: 5 sixteenths are 5/16, 8 are 1/2, 20 are 1¼. */
function ofAnOunce(sixteenths: number): string {
  const [whole, part] = mixed(sixteenths, SIXTEENTHS);
  if (!part || whole === 0) return part || `${whole}`;
  return part in SIGNS ? `${whole}${SIGNS[part]}` : `${whole}${NO_BREAK}${part}`;
}

/** A whole number of parts as a mixed fraction, reduced: 20 of 16 is 1 and "1/4"; "" where none is left. */
function mixed(parts: number, of: number): readonly [whole: number, part: string] {
  const whole = Math.floor(parts / of);
  let top = parts - whole * of;
  if (top === 0) return [whole, ''];
  let bottom = of;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return [whole, `${top}/${bottom}`];
}

function wholeFrom10(value: number): string {
  return trimmed(value, value < TENTH_BELOW ? 1 : 0);
}

function trimmed(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

function isZero(text: string): boolean {
  return /^0\D/.test(text);
}
