import * as v from 'valibot';
import { MOST_SAMPLES, rodInputSchema, type RodInput } from '../model';
import { DataError, parseData } from '../scoring';
import { readBy } from './fields';

/** Steps that are kept: a hundredth of a degree is a third of a millimetre at the tip. */
const STEPS_A_DEGREE = 100;
const STEPS_A_METRE = 1000;

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const DIGIT_BITS = 5;
const MORE = 1 << DIGIT_BITS;
/** A coded number never needs more letters than this: 35 bits. */
const MOST_DIGITS = 7;

const letters = v.pipe(v.string(), v.maxLength(MOST_SAMPLES * MOST_DIGITS, 'is too long'));
const codedRod = v.strictObject({
  elevation: v.union([v.number(), letters]),
  azimuth: v.union([v.number(), letters]),
  line_in: v.optional(letters),
  rod: v.optional(v.literal('real'))
});
/** A rod input in few letters: a number for an angle that was held, else coded samples. */
export type CodedRod = v.InferOutput<typeof codedRod>;

/** A rod input that comes in letters. */
export const rodInLetters = v.pipe(readBy(decodeRod), rodInputSchema);

/**
 * The input in whole steps, in a form that travels. Each sample is coded as the change of its change,
 * which is near zero for a hand: signed to unsigned (zigzag), then 5 bits a letter, low ones first,
 * the sixth bit saying that more follow.
 */
export function encodeRod(input: RodInput): CodedRod {
  const { elevation_deg, azimuth_deg, line_in_m, rod } = input;
  return {
    elevation: encodeAngle(elevation_deg),
    azimuth: encodeAngle(azimuth_deg),
    ...(line_in_m ? { line_in: encodeList(line_in_m, STEPS_A_METRE) } : {}),
    ...(rod ? { rod } : {})
  };
}

/** The input again, to the step. Throws DataError naming the field for what was not made by encodeRod. */
export function decodeRod(coded: unknown): RodInput {
  const { elevation, azimuth, line_in, rod } = parseData(codedRod, coded);
  const line = line_in === undefined ? undefined : decodeList(line_in, STEPS_A_METRE, 'line_in');
  return {
    kind: 'rod_input',
    rate_Hz: 100,
    elevation_deg: decodeAngle(elevation, 'elevation'),
    azimuth_deg: decodeAngle(azimuth, 'azimuth'),
    ...(line ? { line_in_m: line } : {}),
    ...(rod ? { rod } : {})
  };
}

/** The input as it will be after a journey: what is graded here is what is graded there. */
export function asSent(input: RodInput): RodInput {
  return decodeRod(encodeRod(input));
}

function encodeAngle(angle: number | number[]): number | string {
  if (!Array.isArray(angle)) return Math.round(angle * STEPS_A_DEGREE) / STEPS_A_DEGREE;
  return encodeList(angle, STEPS_A_DEGREE);
}

function decodeAngle(coded: number | string, field: string): number | number[] {
  return typeof coded === 'number' ? coded : decodeList(coded, STEPS_A_DEGREE, field);
}

function encodeList(values: readonly number[], steps: number): string {
  let [last, change] = [0, 0];
  return values
    .map((value) => {
      const now = Math.round(value * steps);
      const turn = now - last - change;
      change = now - last;
      last = now;
      return encodeNumber(turn >= 0 ? 2 * turn : -2 * turn - 1);
    })
    .join('');
}

function decodeList(coded: string, steps: number, field: string): number[] {
  const numbers = decodeNumbers(coded, field);
  if (numbers.length < 2) throw new DataError(field, coded, 'must hold two samples or more');
  let [last, change] = [0, 0];
  return numbers.map((number) => {
    change += number % 2 === 0 ? number / 2 : -(number + 1) / 2;
    last += change;
    return last / steps;
  });
}

function encodeNumber(number: number): string {
  let letters = '';
  let rest = number;
  do {
    const digit = rest % MORE;
    rest = Math.floor(rest / MORE);
    letters += LETTERS[rest > 0 ? digit + MORE : digit];
  } while (rest > 0);
  return letters;
}

function decodeNumbers(coded: string, field: string): number[] {
  const numbers: number[] = [];
  let [number, digits] = [0, 0];
  for (const letter of coded) {
    const value = LETTERS.indexOf(letter);
    if (value < 0) throw new DataError(field, letter, 'must be letters of base 64');
    number += (value % MORE) * MORE ** digits;
    digits++;
    if (digits > MOST_DIGITS) throw new DataError(field, coded, 'holds a number too large');
    if (value >= MORE) continue;
    numbers.push(number);
    [number, digits] = [0, 0];
    if (numbers.length > MOST_SAMPLES) {
      throw new DataError(field, numbers.length, `must hold ${MOST_SAMPLES} samples or fewer`);
    }
  }
  if (digits > 0) throw new DataError(field, coded, 'ends in the middle of a sample');
  return numbers;
}
