import * as v from 'valibot';
import { DataError, whole } from '../scoring';

export { whole };

/** Longest name of a lesson, challenge, option or section; a longer one is no name of ours. */
export const shortName = v.pipe(v.string(), v.minLength(1), v.maxLength(80));

const DAY = String.raw`\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])`;
const CLOCK = String.raw`([01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}`;

/** A quantity that lies between two values, both allowed. */
export const between = (least: number, most: number) => {
  const range = `must be from ${least} to ${most}`;
  return v.pipe(v.number(), v.finite(range), v.minValue(least, range), v.maxValue(most, range));
};

/** One spelling only, so that times sort as text. */
export const time = v.pipe(
  v.string(),
  v.regex(new RegExp(`^${DAY}T${CLOCK}Z$`), 'must be a UTC time like 2030-05-01T08:15:00.000Z')
);
/** A day of somebody's calendar. */
export const day = v.pipe(
  v.string(),
  v.regex(new RegExp(`^${DAY}$`), 'must be a day like 2031-05-30')
);

/** Letters of an id: none is taken for another when it is read out. */
const LETTERS = '0123456789abcdefghjkmnpqrstvwxyz';

/** How many random bytes make a secret, past guessing: 160 bits. */
export const TOKEN_BYTES = 32;

/** An id or a token from random bytes, a letter each. */
export function idFrom(random: Uint8Array): string {
  return Array.from(random, (byte) => LETTERS[byte % LETTERS.length]).join('');
}

/** An id that was made anywhere: by idFrom, or by an earlier version in base64url. */
export const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{16,64}$/, 'must be an id'));

/** A secret of ours: who has it may do what it opens. */
export const TOKEN_PATTERN = /^[A-Za-z0-9_-]{22,64}$/;
export const token = v.pipe(v.string(), v.regex(TOKEN_PATTERN, 'must be a token'));

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

/** What another room reads, as a part of a schema: its DataError is a fault of this part. */
export function readBy<T>(read: (input: unknown) => T) {
  return v.pipe(
    v.unknown(),
    v.rawTransform<unknown, T>(({ dataset, addIssue, NEVER }) => {
      try {
        return read(dataset.value);
      } catch (error) {
        if (!(error instanceof DataError)) throw error;
        const { path, value, reason } = error;
        const keys = path === '' ? [] : path.split('.');
        const items = keys.map((key) => {
          return { type: 'unknown', origin: 'value', input: null, key, value } as const;
        });
        const [first, ...rest] = items;
        addIssue({ message: reason, input: value, ...(first ? { path: [first, ...rest] } : {}) });
        return NEVER;
      }
    })
  );
}

/** Names a fault from where the part stands in the whole. */
export function within<T>(field: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    throw new DataError([field, error.path].filter(Boolean).join('.'), error.value, error.reason);
  }
}
