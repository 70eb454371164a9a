import * as v from 'valibot';

/** A finite number from `low` to `high`; anything else is refused, naming the range. */
export function numberIn(low: number, high: number) {
  const range = `must be a number from ${low} to ${high}`;
  return v.pipe(v.number(), v.finite(range), v.minValue(low, range), v.maxValue(high, range));
}

/** Longest list a scenario may carry: half an hour at 100 points a second. */
const MAX_POINTS = 180_000;

export function list(low: number, high: number) {
  return v.pipe(v.array(numberIn(low, high)), v.maxLength(MAX_POINTS));
}

/**
 * Two numbers or more from `low` to `high`, checked in one pass: a try has thousands, and a server
 * reads thousands of tries.
 */
export function samples(low: number, high: number, most: number) {
  const range = `must be a number from ${low} to ${high}`;
  return v.pipe(
    v.custom<number[]>(Array.isArray, 'must be a list'),
    v.minLength(2, 'must hold 2 samples or more'),
    v.maxLength(most, `must hold ${most} samples or fewer`),
    v.rawCheck(({ dataset: { value, typed }, addIssue }) => {
      if (!typed) return;
      const key = (value as unknown[]).findIndex(
        (one) => !(typeof one === 'number' && one >= low && one <= high)
      );
      if (key < 0) return;
      const at = { type: 'array', origin: 'value', input: value, key, value: value[key] } as const;
      addIssue({ message: range, input: value[key], path: [at] });
    })
  );
}
