import * as v from 'valibot';

/** A finite number from `low` to `high`; anything else is refused, naming the range. */
export function number(low: number, high: number) {
  const range = `must be a number from ${low} to ${high}`;
  return v.pipe(v.number(), v.finite(range), v.minValue(low, range), v.maxValue(high, range));
}

/** Longest list a scenario may carry: half an hour of rod input at 100 samples a second. */
const MAX_SAMPLES = 180_000;

export function list(low: number, high: number) {
  return v.pipe(v.array(number(low, high)), v.maxLength(MAX_SAMPLES));
}
