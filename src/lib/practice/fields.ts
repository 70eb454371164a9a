import * as v from 'valibot';
import { DataError } from '../scoring';

/** Longest name of a lesson, challenge, option or section; a longer one is no name of ours. */
export const nameSchema = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
/** One spelling only, so that times sort as text. */
export const timeSchema = v.pipe(
  v.string(),
  v.regex(
    /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/,
    'must be a UTC time like 2030-05-01T08:15:00.000Z'
  )
);

/** What was said of a try before it was shown. */
export const guessEntries = {
  /**
   * How far the learner thought the bait had gone, m towards the angler; of a hop how high.
   */
  guess_m: v.optional(v.pipe(v.number(), v.minValue(-100), v.maxValue(100))),
  /** Whether the learner thought the bait had lifted on its way. */
  guess_lifted: v.optional(v.boolean()),
  /** Of a fall: whether the learner thought the bait lay on the bottom when the rod moved. */
  guess_down: v.optional(v.boolean())
};

/** One line a person typed: no control characters, no spaces around it. */
export const line = (most: number, least = 1) =>
  v.pipe(
    v.string(),
    v.maxLength(most * 2),
    v.transform((text) => text.replace(/\p{Cc}+/gu, ' ').trim()),
    v.minLength(least, 'must not be empty'),
    v.maxLength(most, `must be ${most} letters or fewer`)
  );

/** Text a person typed, line ends kept. */
export const words = (most: number) =>
  v.pipe(
    v.string(),
    v.maxLength(most * 2),
    v.transform((text) => text.replace(/[^\P{Cc}\n]+/gu, ' ').trim()),
    v.maxLength(most, `must be ${most} letters or fewer`)
  );

/** Names a fault from where the part stands in the whole. */
export function within<T>(field: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    throw new DataError([field, error.path].filter(Boolean).join('.'), error.value, error.reason);
  }
}
